using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>How far apart the margins of several stations lie.</summary>
/// <param name="Range">Highest less lowest margin; 0 stops or more.</param>
/// <param name="Uncertainty">Standard uncertainty of that difference.</param>
public sealed record WhiteSpread(Stops Range, Stops Uncertainty)
{
    /// <summary>The spread of margins.</summary>
    /// <param name="levels">The margins; at least one. Each was measured for itself.</param>
    /// <returns>max − min, with √(u² of the one + u² of the other).</returns>
    [Source("Gum", "5.1.2: independent quantities")]
    public static WhiteSpread Of(IReadOnlyList<WhiteLevel> levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        var (lowest, highest) = (levels.MinBy(level => level.Margin.Value)!, levels.MaxBy(level => level.Margin.Value)!);
        return new WhiteSpread(highest.Margin - lowest.Margin, new Stops(lowest == highest ? 0 : double.Hypot(lowest.Uncertainty.Value, highest.Uncertainty.Value)));
    }
}
