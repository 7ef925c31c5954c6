using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class BeamLobeTests
{
    // n = ln 0.5/ln cos θ, evaluated by an independent program; half the last printed digit.
    [Theory]
    [InlineData(15, 19.99)]
    [InlineData(20, 11.14)]
    [InlineData(25, 7.05)]
    [InlineData(30, 4.82)]
    [InlineData(35, 3.47)]
    [InlineData(40, 2.60)]
    [InlineData(45, 2.00)]
    public void Lobe_exponent_follows_from_the_half_angle(double halfAngle, double exponent) =>
        BeamLobe.FromCoverage(Angle.FromDegrees(2 * halfAngle), Angle.FromDegrees(2 * halfAngle)).ExponentAcross
            .Should().BeApproximately(exponent, 0.005);

    // log₂((n + 1)/(2·0.85)), evaluated by an independent program; half the last printed digit.
    [Theory]
    [InlineData(25, 2.24)]
    [InlineData(30, 1.78)]
    [InlineData(35, 1.40)]
    [InlineData(45, 0.82)]
    public void Dome_loss_follows_from_the_two_beams(double halfAngle, double loss)
    {
        var bare = BeamLobe.FromCoverage(Angle.FromDegrees(2 * halfAngle), Angle.FromDegrees(2 * halfAngle));
        ModifierLoss.OnAxis(bare, BeamLobe.Lambertian, 0.85).Value.Should().BeApproximately(loss, 0.005);
    }

    // Common practice, no source: domes and small softboxes lose 1 to 2 stops. Heads are set wide under them, 24 to 28 mm.
    [Theory]
    [InlineData(24)]
    [InlineData(28)]
    public void Dome_loss_on_a_wide_head_is_one_to_two_stops(double zoom)
    {
        var loss = ModifierLoss.OnAxis(BeamLobe.FromZoom(Length.FromMillimeters(zoom)), BeamLobe.Lambertian, 0.85);
        loss.Value.Should().BeInRange(1, 2);
        ModifierLoss.Caveat(loss).Should().BeNull();
    }

    [Fact]
    public void A_narrow_head_under_a_dome_comes_with_a_caveat() =>
        ModifierLoss.Caveat(ModifierLoss.OnAxis(BeamLobe.FromZoom(Length.FromMillimeters(105)), BeamLobe.Lambertian, 0.85))
            .Should().Contain("with and without it");

    // Small boxes with two diffusers really lose near 3 stops (common practice, no source): nothing to warn of.
    [Fact]
    public void A_small_softbox_of_2_8_stops_is_a_usual_one() => ModifierLoss.Caveat(new StudioKit.Physics.Exposure.Stops(2.8)).Should().BeNull();

    // Published table of flash zoom coverage, horizontal × vertical, printed to a tenth of a degree.
    [Theory]
    [InlineData(24, 73.7, 53.1)]
    [InlineData(35, 54.4, 37.8)]
    [InlineData(50, 39.6, 27.0)]
    [InlineData(85, 23.9, 16.1)]
    [InlineData(105, 19.5, 13.0)]
    [InlineData(200, 10.3, 6.9)]
    public void Coverage_of_a_zoom_setting_agrees_with_the_published_table(double zoom, double across, double up)
    {
        BeamCoverage.Across(Length.FromMillimeters(zoom)).Degrees.Should().BeApproximately(across, 0.05);
        BeamCoverage.Up(Length.FromMillimeters(zoom)).Degrees.Should().BeApproximately(up, 0.05);
    }

    [Fact]
    public void Flux_of_a_two_axis_lobe_agrees_with_summing_over_the_sphere() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.5, 20]).Sample(
            (across, up) =>
            {
                var lobe = new BeamLobe(across, up);
                return Math.Abs(SummedFlux(lobe) / lobe.FluxPerAxialIntensity - 1) < 2e-3;
            },
            iter: 20);

    [Fact]
    public void A_round_beam_gives_2_pi_over_n_plus_1() =>
        BeamLobe.Round(7).FluxPerAxialIntensity.Should().BeApproximately(2 * Math.PI / 8, 1e-12);

    [Fact]
    public void A_lobe_is_half_as_bright_at_the_edge_of_its_coverage_and_dark_behind()
    {
        var lobe = BeamLobe.FromZoom(Length.FromMillimeters(35));
        lobe.RelativeIntensity(Math.Cos(BeamCoverage.Across(Length.FromMillimeters(35)).Radians / 2), 1).Should().BeApproximately(0.5, 1e-12);
        lobe.RelativeIntensity(Math.Cos(BeamCoverage.Up(Length.FromMillimeters(35)).Radians / 2), 0).Should().BeApproximately(0.5, 1e-12);
        lobe.RelativeIntensity(-0.2, 0.5).Should().Be(0);
        lobe.RelativeIntensity(1, 0.5).Should().Be(1);
    }

    [Fact]
    public void Impossible_beams_are_refused()
    {
        FluentActions.Invoking(() => BeamLobe.FromCoverage(Angle.FromDegrees(180), Angle.FromDegrees(40)))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => BeamLobe.Round(-1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => BeamLobe.FromZoom(Length.Zero)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ModifierLoss.OnAxis(BeamLobe.Lambertian, BeamLobe.Lambertian, 0))
            .Should().Throw<ArgumentOutOfRangeException>();
    }

    // Plain midpoint sum over the half-sphere, slow on purpose.
    private static double SummedFlux(BeamLobe lobe)
    {
        const int steps = 300;
        var sum = 0.0;
        for (var i = 0; i < steps; i++)
        {
            var theta = (i + 0.5) * Math.PI / 2 / steps;
            for (var j = 0; j < steps; j++)
            {
                var cosine = Math.Cos((j + 0.5) * 2 * Math.PI / steps);
                sum += lobe.RelativeIntensity(Math.Cos(theta), cosine * cosine) * Math.Sin(theta);
            }
        }

        return sum * (Math.PI / 2 / steps) * (2 * Math.PI / steps);
    }
}
