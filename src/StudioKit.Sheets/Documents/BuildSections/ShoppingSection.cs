using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>What to buy or take from the shelf.</summary>
internal static class ShoppingSection
{
    public static IEnumerable<Block> Of(Workshop workshop)
    {
        yield return new Heading("Shopping list", 2);
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("Item"), new Column("Count", ColumnKind.Right),
                new Column($"Each, {workshop.Currency}", ColumnKind.Decimal), new Column($"Together, {workshop.Currency}", ColumnKind.Decimal),
            ],
            [
                .. workshop.Shopping.Select(line => new TableRow(["tick", line.Item, BuildFigures.Count(line.Count), BuildFigures.Money(line.PriceEach), BuildFigures.Money(line.Total)])),
                new TableRow(workshop.TotalCost is { } total ? ["", "Sum", "", "", BuildFigures.Money(total)] : ["", "No sum: some prices are missing.", "", "", ""], Total: true),
            ]);
        yield return new Paragraph("Tools: a fine saw or pipe cutter, a file for burrs, a steel rule, a pencil, a drill for the caps of the feet, a spirit level. Take one fitting of each kind home first and measure its take-off: makers differ.");
    }
}
