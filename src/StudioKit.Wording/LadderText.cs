using System.Globalization;
using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;

namespace StudioKit.Wording;

/// <summary>What a power ladder says, in words.</summary>
public static class LadderText
{
    /// <summary>The verdict, as a sentence.</summary>
    /// <param name="map">The measured map.</param>
    /// <param name="power">Power that it is told for.</param>
    public static string Verdict(MeasuredMarginMap map, DialMark power)
    {
        ArgumentNullException.ThrowIfNull(map);
        return map.DarkestAt(power.Power) switch
        {
            null => "NOTHING TO TELL: no cell was seen between black and clipping.",
            { Stops: < 0, IsLeast: false } dark => Text($"NOT WHITE at {power}: the darkest cell lies {Rounded.Stops(dark.Stops, 1)} under clipping."),
            { IsLeast: true } least => Text($"WHITE at {power}: the darkest cell lies at least {Rounded.SignedStops(least.Stops, 1)} over clipping."),
            { } white => Text($"WHITE at {power}: the darkest cell lies {Rounded.SignedStops(white.Stops, 1)} over clipping."),
        };
    }

    /// <summary>The measured map against the plan's, as a sentence.</summary>
    /// <param name="compared">The comparison.</param>
    /// <param name="mends">What mends a difference of the whole, where it is said.</param>
    public static string Against(MarginComparison compared, string mends)
    {
        ArgumentNullException.ThrowIfNull(compared);
        return double.IsFinite(compared.MeanStops)
            ? Text($"On average {Rounded.SignedStops(compared.MeanStops, 2)} against the plan (light, sheet or clip point: {mends}), and {Rounded.Stops(compared.SpreadStops, 2)} about that (place or beam of the flash).")
            : "Nothing could be compared with the plan: no cell was seen under clipping.";
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
