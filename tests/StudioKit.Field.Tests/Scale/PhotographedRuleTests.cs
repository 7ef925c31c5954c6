using StudioKit.Field.Scale;

namespace StudioKit.Field.Tests.Scale;

public sealed class PhotographedRuleTests
{
    /// <summary>The period is the one the rule was drawn with; 0.3 % is what the job asks for.</summary>
    [Theory]
    [InlineData(23.7, 0)]
    [InlineData(23.7, 90)]
    [InlineData(31.4, 3.3)]
    [InlineData(17.2, 41)]
    [InlineData(52.9, 118)]
    [InlineData(9.3, 175)]
    public void Period_of_a_drawn_rule_is_found_at_any_rotation(double period, double degrees)
    {
        var measured = PhotographedRule.Measure(DrawnRule.On(1300, 900, period, degrees)).Value!;

        measured.PeriodPixels.Should().BeApproximately(period, 0.003 * period);
        measured.MicrometresPerPixel.Should().BeApproximately(1000 / period, 3 / period);
        var off = Math.Abs(measured.AngleDegrees - degrees) % 180;

        // Two and a half degrees stretch the period by a thousandth, a third of what is allowed.
        Math.Min(off, 180 - off).Should().BeLessThan(2.5);
    }

    [Fact]
    public void A_rule_in_a_large_picture_is_measured_in_pixels_of_the_file() =>
        PhotographedRule.Measure(DrawnRule.On(3600, 2400, 77.3, 12)).Value!.PeriodPixels.Should().BeApproximately(77.3, 0.003 * 77.3);

    [Fact]
    public void A_picture_without_a_rule_is_refused()
    {
        var sensor = new SensorModel(900, 600) { Margin = (u, v) => -0.5 - u + Math.Sin(9 * v * v) };

        PhotographedRule.Measure(sensor.Expose()).Diagnostics
            .Should().ContainSingle().Which.Code.Should().Be("FLD301");
    }
}
