namespace StudioKit.Kits.Quantities;

/// <summary>Reads what follows <c>±</c>.</summary>
internal static class UncertaintyText
{
    public static Reading<Uncertainty> Read(ValueKind kind, string text)
    {
        if (!kind.TakesUncertainty)
        {
            return Reading<Uncertainty>.Bad($"{char.ToUpperInvariant(kind.Noun[0])}{kind.Noun[1..]} takes no '±'.", "Leave out '±' and what follows.");
        }

        if (text.EndsWith('%'))
        {
            return NumberText.Quantity(text, UnitDimension.Share).Then(share => Positive(share, UncertaintyKind.Relative, text));
        }

        if (kind.CountsLight && (text.EndsWith("stop", StringComparison.Ordinal) || text.EndsWith("stops", StringComparison.Ordinal) || kind.IsInStops))
        {
            return LightText.StopCount(text).Then(stops => Positive(stops, UncertaintyKind.InStops, text));
        }

        return kind.IsRelativeOnly
            ? Reading<Uncertainty>.Bad($"'± {text}' is not the uncertainty of {kind.Noun}.", "Write it in '%' or in stops.")
            : kind.ReadMeasure!(text).Then(amount => Positive(amount * kind.ToSi, UncertaintyKind.Absolute, text));
    }

    private static Reading<Uncertainty> Positive(double amount, UncertaintyKind kind, string text) => amount >= 0
        ? Reading<Uncertainty>.Good(new Uncertainty(amount, kind, text))
        : Reading<Uncertainty>.Bad($"'± {text}' has a sign of its own.", "Write the amount without a sign.");
}
