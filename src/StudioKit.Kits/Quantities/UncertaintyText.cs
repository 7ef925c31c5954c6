namespace StudioKit.Kits.Quantities;

/// <summary>Reads what follows <c>±</c>.</summary>
internal static class UncertaintyText
{
    // Three times as much or a third: who knows less of a value than that has not measured it.
    private const double LargestShare = 2;

    // From full power to a thousandth: no value that light goes with is known worse.
    private const double MostStops = 10;

    /// <summary>Reads it.</summary>
    /// <param name="kind">Kind of the value that it belongs to.</param>
    /// <param name="widest">The whole range of the value's key, in the unit table's units; an amount cannot be larger.</param>
    /// <param name="text">What follows the sign.</param>
    public static Reading<Uncertainty> Read(ValueKind kind, double widest, string text)
    {
        if (!kind.TakesUncertainty)
        {
            return Reading<Uncertainty>.Bad($"{char.ToUpperInvariant(kind.Noun[0])}{kind.Noun[1..]} takes no '±'.", "Leave out '±' and what follows.");
        }

        if (text.EndsWith('%'))
        {
            return NumberText.Quantity(text, UnitDimension.Share).Then(share => Bounded(share, LargestShare, UncertaintyKind.Relative, text));
        }

        if (kind.CountsLight && (text.EndsWith("stop", StringComparison.Ordinal) || text.EndsWith("stops", StringComparison.Ordinal) || kind.IsInStops))
        {
            return LightText.StopCount(text).Then(stops => Bounded(stops, MostStops, UncertaintyKind.InStops, text));
        }

        return kind.IsRelativeOnly
            ? Reading<Uncertainty>.Bad($"'± {text}' is not the uncertainty of {kind.Noun}.", "Write it in '%' or in stops.")
            : kind.ReadMeasure!(text).Then(amount => Bounded(amount * kind.ToSi, widest * kind.ToSi, UncertaintyKind.Absolute, text));
    }

    private static Reading<Uncertainty> Bounded(double amount, double most, UncertaintyKind kind, string text) => amount >= 0
        ? amount <= most
            ? Reading<Uncertainty>.Good(new Uncertainty(amount, kind, text))
            : Reading<Uncertainty>.Bad($"'± {text}' is more than the value itself could be off.", "Write how far off it may be, for example '± 5 %', or leave '±' out.")
        : Reading<Uncertainty>.Bad($"'± {text}' has a sign of its own.", "Write the amount without a sign.");
}
