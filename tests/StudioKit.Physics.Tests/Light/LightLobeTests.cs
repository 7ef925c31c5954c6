using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class LightLobeTests
{
    /// <summary>A beam's vector form against its scalar one, which was written apart from it.</summary>
    [Fact]
    public void The_solvers_beam_is_the_budgets_beam() =>
        Gen.Double[0, 20].Select(Gen.Double[0, 20], Gen.Double[0, 1.5], Gen.Double[0, 6.28]).Sample((across, along, polar, azimuth) =>
        {
            var (sine, cosine) = Math.SinCos(polar);
            var share = Math.Pow(Math.Cos(azimuth), 2);
            var found = new CosineLobe(across, along).RelativeIntensity(sine * Math.Cos(azimuth), sine * Math.Sin(azimuth), cosine);
            return Math.Abs(found - new BeamLobe(across, along).RelativeIntensity(cosine, share)) < 1e-9;
        });

    /// <summary>From cosⁿ to Lambertian at a transmittance of 0.85, evaluated by an independent program to two decimals.</summary>
    [Theory]
    [InlineData(25, 2.24)]
    [InlineData(30, 1.78)]
    [InlineData(35, 1.40)]
    [InlineData(45, 0.82)]
    public void A_dome_loses_on_the_axis_what_it_spreads(double halfAngle, double stops)
    {
        var bare = BeamLobe.FromCoverage(Angle.FromDegrees(2 * halfAngle), Angle.FromDegrees(2 * halfAngle));

        ModifierLoss.OnAxis(bare, BeamLobe.Lambertian, 0.85).Value.Should().BeApproximately(stops, 0.005);
    }

    /// <summary>Independent route: the flux by a plain sum over the sphere.</summary>
    [Fact]
    public void Flux_of_a_beam_with_two_exponents_agrees_with_a_plain_sum() =>
        Gen.Double[0.5, 20].Select(Gen.Double[0.5, 20]).Sample(
            (across, along) =>
            {
                var lobe = new CosineLobe(across, along);
                return Math.Abs((Sum(lobe) / lobe.FluxOverAxialIntensity) - 1) < 2e-3;
            },
            iter: 10);

    [Fact]
    public void A_dome_sends_half_as_much_sideways_and_its_flux_is_two_pi()
    {
        var dome = new DomeLobe();

        dome.RelativeIntensity(1, 0, 0).Should().Be(0.5);
        Sum(dome).Should().BeApproximately(2 * Math.PI, 0.001);
    }

    [Fact]
    public void Nothing_leaves_a_flat_front_backwards() => new CosineLobe(0, 3).RelativeIntensity(0, 0.6, -0.8).Should().Be(0);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void An_impossible_exponent_is_refused(double exponent)
    {
        var make = () => new CosineLobe(exponent, 1);

        make.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("exponentAcross");
    }

    private static double Sum(LightLobe lobe)
    {
        const int Rings = 200;
        const int Sectors = 100;
        var sum = 0.0;
        for (var i = 0; i < Rings; i++)
        {
            var (sine, cosine) = Math.SinCos((i + 0.5) * Math.PI / Rings);
            for (var j = 0; j < Sectors; j++)
            {
                var (up, right) = Math.SinCos((j + 0.5) * 2 * Math.PI / Sectors);
                sum += lobe.RelativeIntensity(sine * right, sine * up, cosine) * sine;
            }
        }

        return sum * 2 * Math.PI * Math.PI / (Rings * Sectors);
    }
}
