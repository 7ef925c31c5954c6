using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class LightLobeTests
{
    /// <summary>n = ln 0.5/ln cos θ, evaluated by an independent program to two decimals.</summary>
    [Theory]
    [InlineData(15, 19.99)]
    [InlineData(20, 11.14)]
    [InlineData(25, 7.05)]
    [InlineData(30, 4.82)]
    [InlineData(35, 3.47)]
    [InlineData(40, 2.60)]
    [InlineData(45, 2.00)]
    public void Exponent_follows_from_the_half_angle(double halfAngle, double exponent)
    {
        var lobe = CosineLobe.FromFullWidths(Angle.FromDegrees(2 * halfAngle), Angle.FromDegrees(60));

        lobe.ExponentAcross.Should().BeApproximately(exponent, 0.005);
        lobe.RelativeIntensity(Math.Sin(halfAngle * Math.PI / 180), 0, Math.Cos(halfAngle * Math.PI / 180)).Should().BeApproximately(0.5, 1e-9);
    }

    /// <summary>From cosⁿ to Lambertian at a transmittance of 0.85, evaluated by an independent program to two decimals.</summary>
    [Theory]
    [InlineData(25, 2.24)]
    [InlineData(30, 1.78)]
    [InlineData(35, 1.40)]
    [InlineData(45, 0.82)]
    public void A_dome_loses_on_the_axis_what_it_spreads(double halfAngle, double stops)
    {
        var bare = CosineLobe.FromFullWidths(Angle.FromDegrees(2 * halfAngle), Angle.FromDegrees(2 * halfAngle));

        FlashIntensity.ModifierLoss(bare, CosineLobe.Lambertian, 0.85).Value.Should().BeApproximately(stops, 0.005);
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

    /// <summary>I₀ = C·GN²/100·P, so GN 30 m at 1/5.04 and 0.45 m gives 2204.6 lx·s (independent program).</summary>
    [Fact]
    public void Intensity_times_time_follows_from_the_guide_number()
    {
        var intensity = FlashIntensity.OnAxis(new GuideNumber(Length.FromMeters(30)), new FlashPower(1 / 5.04));

        // The power was printed as 5.04 but is 2^(7/3) = 5.0397; hence a tenth of a per mille.
        (intensity / (0.45 * 0.45)).Should().BeApproximately(2204.6, 0.25);
    }

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
