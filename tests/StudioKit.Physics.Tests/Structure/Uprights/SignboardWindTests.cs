using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Uprights;

namespace StudioKit.Physics.Tests.Structure.Uprights;

public sealed class SignboardWindTests
{
    /// <summary>A published example of EN 1991-1-4, 7.4.3: a board of 7 m × 5 m at a peak pressure of 1.61 kN/m² is pushed with 101.43 kN, 1.25 m beside its middle. The force is 1.8 times pressure times area, to the digits given.</summary>
    [Fact]
    public void A_signboard_is_pushed_as_a_published_example_of_the_standard_has_it()
    {
        var speed = Math.Sqrt(2 * 1610 / Wind.AirDensity);

        (SignboardWind.Pressure(speed) * 7 * 5).Should().BeApproximately(101_430, 5);
        (SignboardWind.Eccentricity * 5).Should().Be(1.25);
    }

    /// <summary>Two poles at the edges of a beam of width b bear a force that acts b/4 beside its middle as a lever does: three quarters and one quarter.</summary>
    [Fact]
    public void The_pole_on_the_windier_side_bears_three_quarters() => SignboardWind.PoleShare(0.6, 0.6).Should().BeApproximately(0.75, 1e-12);

    /// <summary>The same lever for poles nearer to the middle: moments about the lee pole.</summary>
    [Fact]
    public void Poles_nearer_the_middle_bear_more_on_one_side() =>
        Gen.Select(Gen.Double[0.1, 3], Gen.Double[0.5, 1]).Sample((width, part) =>
        {
            var spacing = width * part;
            var byMoments = ((spacing / 2) + (width / 4)) / spacing;
            return Math.Abs(SignboardWind.PoleShare(width, spacing) - byMoments) < 1e-9;
        });

    [Fact]
    public void In_still_air_nothing_pushes() => SignboardWind.Pressure(0).Should().Be(0);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(double.NaN, 1)]
    public void Boards_and_poles_without_width_are_refused(double width, double spacing) =>
        FluentActions.Invoking(() => SignboardWind.PoleShare(width, spacing)).Should().Throw<ArgumentOutOfRangeException>();
}
