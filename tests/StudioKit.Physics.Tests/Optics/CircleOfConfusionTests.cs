using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class CircleOfConfusionTests
{
    /// <summary>Common practice, no source: a 1500th and a 1730th of the diagonal; 0.0288 and 0.025 mm on 36 mm × 24 mm.</summary>
    [Theory]
    [InlineData(36, 24, 1500, 0.0288)]
    [InlineData(36, 24, 1730, 0.0250)]
    [InlineData(23.5, 15.6, 1500, 0.0188)]
    [InlineData(17.3, 13.0, 1500, 0.0144)]
    public void A_share_of_the_diagonal_gives_the_usual_figures(double width, double height, double divisor, double millimetres) =>
        (CircleOfConfusion.FromDiagonal(width / 1000, height / 1000, divisor) * 1000).Should().BeApproximately(millimetres, 0.00006);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_sensor_that_is_none_is_refused(double bad)
    {
        FluentActions.Invoking(() => CircleOfConfusion.FromDiagonal(bad, 0.024)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => CircleOfConfusion.FromDiagonal(0.036, bad)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
