using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Where a map over the frame tells margins apart.</summary>
public static class MarginBands
{
    /// <summary>What a white point should have to spare: what a set-up asks for where its kit says nothing else.</summary>
    public static Stops Spare { get; } = new(1.0 / 3);

    /// <summary>Differences up to this count as none: half of the least click of a dial (common practice, no source).</summary>
    public static Stops Same { get; } = new(0.15);

    /// <summary>Band of a white margin.</summary>
    /// <param name="stops">The margin in stops [1]; not a number where unknown.</param>
    public static MarginBand OfMargin(double stops) =>
        double.IsNaN(stops) ? MarginBand.Unknown : stops < 0 ? MarginBand.Dark : stops < Spare.Value ? MarginBand.Tight : MarginBand.White;

    /// <summary>Band of a measured margin less a planned one.</summary>
    /// <param name="stops">The difference in stops [1]; not a number where unknown.</param>
    public static MarginBand OfDifference(double stops) =>
        double.IsNaN(stops) ? MarginBand.Unknown : stops < -Same.Value ? MarginBand.Dark : stops > Same.Value ? MarginBand.Bright : MarginBand.Same;
}
