namespace StudioKit.Physics.Exposure.Budgets;

/// <summary>Makes budget lines whose numbers read the same in every language.</summary>
internal static class BudgetLine
{
    public static LightBudgetLine Of(
        string item, double stops, FormattableString detail, string sourceKey, string sourceLocator, Stops uncertainty = default) =>
        new(item, new Stops(stops), FormattableString.Invariant(detail), sourceKey, sourceLocator) { Uncertainty = uncertainty };
}
