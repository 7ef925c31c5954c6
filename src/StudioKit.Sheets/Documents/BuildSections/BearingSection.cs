using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>What frame and sheets bear, and what was assumed.</summary>
internal static class BearingSection
{
    public static IEnumerable<Block> Of(Plan plan)
    {
        var checks = plan.Checks.Where(check => check.Loads.Count > 0).ToList();
        if (checks.Count == 0)
        {
            yield break;
        }

        yield return new Heading("What it bears, and what was assumed", 2);
        yield return new Table(
            [
                new Column("Check"), new Column("Taken for given"), new Column("Asked", ColumnKind.Right), new Column("Borne", ColumnKind.Right),
                new Column("Ratio", ColumnKind.Decimal), new Column("Result"),
            ],
            [.. checks.Select(check => new TableRow(
            [
                CheckText.Name(check), LoadText.Of(check.Loads), CheckText.Demand(check), CheckText.Capacity(check),
                check.Ratio is { } ratio ? BuildFigures.Number(ratio, "0.00") : "", check.Passed ? "holds" : "FAILS",
            ]))],
            TypeScale.Small);
        if ((plan.Frame?.Wind ?? (plan.Workshop is { Uprights: [var first, ..] } ? first.Wind : null)) is { } wind)
        {
            yield return new Paragraph($"Wind: {LoadText.Of(wind)}. Heavier elbows, boxes, sun or wind than these go into the kit, and the plan is made again.");
        }
    }
}
