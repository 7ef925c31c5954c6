namespace StudioKit.Kits.Tests;

public sealed class UncertaintyInStopsTests
{
    /// <summary>A tenth more of a guide number is 21 % more light, 0.2750 stop; of a transmittance 10 %, 0.1375 stop.</summary>
    [Theory]
    [InlineData(0.1, UncertaintyKind.Relative, 2, 0.2750)]
    [InlineData(3, UncertaintyKind.Absolute, 2, 0.2750)]
    [InlineData(0.1, UncertaintyKind.Relative, 1, 0.1375)]
    [InlineData(0.3, UncertaintyKind.InStops, 2, 0.3)]
    public void An_uncertainty_is_counted_in_stops_of_light(double amount, UncertaintyKind kind, int power, double stops) =>
        UncertaintyInStops.Of(new Uncertainty(amount, kind, ""), 30, power).Should().BeApproximately(stops, 1e-4);

    [Theory]
    [InlineData(0)]
    [InlineData(-30)]
    [InlineData(double.NaN)]
    public void A_share_of_nothing_is_refused(double value) =>
        FluentActions.Invoking(() => UncertaintyInStops.Of(new Uncertainty(3, UncertaintyKind.Absolute, ""), value, 2))
            .Should().Throw<ArgumentOutOfRangeException>();
}
