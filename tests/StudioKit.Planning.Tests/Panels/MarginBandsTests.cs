using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Tests.Panels;

public sealed class MarginBandsTests
{
    /// <summary>A third of a stop to spare is what a set-up asks for by default (common practice, no source).</summary>
    [Theory]
    [InlineData(-0.01, MarginBand.Dark)]
    [InlineData(0, MarginBand.Tight)]
    [InlineData(0.33, MarginBand.Tight)]
    [InlineData(0.34, MarginBand.White)]
    [InlineData(double.NaN, MarginBand.Unknown)]
    public void A_point_is_white_with_a_third_of_a_stop_to_spare(double stops, MarginBand band) => MarginBands.OfMargin(stops).Should().Be(band);

    [Theory]
    [InlineData(-0.16, MarginBand.Dark)]
    [InlineData(-0.14, MarginBand.Same)]
    [InlineData(0.14, MarginBand.Same)]
    [InlineData(0.16, MarginBand.Bright)]
    [InlineData(double.NaN, MarginBand.Unknown)]
    public void Half_a_click_more_or_less_is_as_planned(double stops, MarginBand band) => MarginBands.OfDifference(stops).Should().Be(band);
}
