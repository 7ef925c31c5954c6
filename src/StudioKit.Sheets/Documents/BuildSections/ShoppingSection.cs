using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>What to buy, what to look for at home, and the tools.</summary>
internal static class ShoppingSection
{
    private const int ToolColumns = 3;

    public static IEnumerable<Block> Of(Workshop workshop)
    {
        yield return new Heading("Shopping list", 2);
        yield return new Paragraph($"Take one fitting of each kind home first and measure its take-off: makers differ.{(workshop.Hardware.Count > 0 ? " A number is that of the page of small parts." : "")}{(workshop.Unpriced > 0 ? " A question mark is a price that the kit does not give." : "")}");
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("No."), new Column("Item"), new Column("Count", ColumnKind.Right),
                new Column($"Each, {workshop.Currency}", ColumnKind.Decimal), new Column($"Together, {workshop.Currency}", ColumnKind.Decimal),
            ],
            [
                .. workshop.Shopping.Where(line => !line.IsFromTheHouse).Select(line => new TableRow(
                    ["tick", Number(workshop, line), line.Item, BuildFigures.Count(line.Count), BuildFigures.Money(line.PriceEach), BuildFigures.Money(line.Total)])),
                new TableRow(["", "", Sum(workshop), "", "", BuildFigures.Money(workshop.PricedCost)], Total: true),
            ]);
        foreach (var block in AtHome(workshop, [.. workshop.Shopping.Where(line => line is { IsFromTheHouse: true, Tool: null })]).Concat(Tools([.. workshop.Shopping.Where(line => line.Tool is not null)])))
        {
            yield return block;
        }

    }

    private static IEnumerable<Block> AtHome(Workshop workshop, IReadOnlyList<ShoppingLine> lines)
    {
        if (lines.Count == 0)
        {
            yield break;
        }

        yield return new Heading("From the house, or bought", 3);
        var half = (lines.Count + 1) / 2;
        yield return new SideBySide([.. new[] { lines.Take(half), lines.Skip(half) }.Select(column => ((Block)new Table(
            [new Column(" ", ColumnKind.TickBox), new Column("No."), new Column("Item"), new Column("Count", ColumnKind.Right)],
            [.. column.Select(line => new TableRow(["tick", Number(workshop, line), line.Item, BuildFigures.Count(line.Count)]))]), 1.0))]);
    }

    private static IEnumerable<Block> Tools(IReadOnlyList<ShoppingLine> tools)
    {
        if (tools.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Tools", 3);
        yield return new SideBySide([.. tools.Chunk((tools.Count + ToolColumns - 1) / ToolColumns).Select(column => ((Block)new Table(
            [new Column(" ", ColumnKind.TickBox), new Column("Tool")], [.. column.Select(tool => new TableRow(["tick", tool.Item]))]), 1.0))]);
    }

    private static string Number(Workshop workshop, ShoppingLine line) => line.Hardware is { } part ? BuildFigures.Count(workshop.Hardware.ToList().IndexOf(part) + 1) : "";

    private static string Sum(Workshop workshop) => workshop.Unpriced switch
    {
        0 => "Sum",
        1 => "Sum, without one line that has no price",
        var missing => FormattableString.Invariant($"Sum, without {missing} lines that have no price"),
    };
}
