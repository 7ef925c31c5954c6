using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The cut list and parts list.</summary>
internal static class CutListSheet
{
    public static SheetDocument Make(Plan plan, Workshop workshop, Stamp stamp, PageSetup page) => new(
        "Cut list and parts list",
        stamp,
        page,
        [
            new Heading("Cut list and parts list"),
            new Paragraph($"{workshop.PipeName}; {workshop.FittingsName}.{(plan.Frame is { } built ? $" Pipe and fittings of the frame weigh {PlanFormat.Mass(built.Mass)}." : "")}"),
            .. plan.Frame is { } frame ? Pieces(frame) : [],
            .. UprightBlocks.Pieces(workshop.Uprights),
            .. PipeCuts(workshop.PipeCuts),
            new Caution(UsualCautions.SawingPipe),
            .. SheetCuts(plan, workshop),
            .. plan.Frame is { } fitted ? Fittings(fitted) : [],
            .. Parts(workshop),
        ]);

    private static IEnumerable<Block> Pieces(FramePlan frame)
    {
        yield return new Heading("Pieces of pipe", 2);
        yield return new Table(
            [
                new Column("Group"), new Column("Count", ColumnKind.Right), new Column("Cut to, mm", ColumnKind.Decimal),
                new Column("By geometry, mm", ColumnKind.Decimal), new Column("Pieces"),
            ],
            [.. frame.Pieces.Select(piece => new TableRow(
                [piece.Group, Text(piece.Count), Millimetres(piece.Rounded), Millimetres(piece.Exact), string.Join(", ", piece.Members)]))]);
        foreach (var problem in FrameProblems.Of(frame))
        {
            yield return problem;
        }
    }

    private static IEnumerable<Block> PipeCuts(BarCutPlan cuts)
    {
        yield return new Heading("Which piece from which bar", 2);
        yield return new Paragraph($"Measures run from the squared end to the mark; the saw's kerf lies beyond it. Bars are drawn to one scale, measures in millimetres. {Proof(cuts.Proof)}");
        foreach (var pattern in cuts.Bars.Count == 0 ? [] : BarCutDrawing.EachPattern(cuts))
        {
            yield return new DrawingBlock(pattern, Caption: "");
        }

        foreach (var missing in cuts.Uncut)
        {
            yield return new Caution(UncutText.Of(missing), "Not cut");
        }
    }

    private static IEnumerable<Block> SheetCuts(Plan plan, Workshop workshop)
    {
        yield return new Heading(plan.Frame is null ? "Sheet goods" : "Panel and sheet goods", 2);
        if (plan.Frame is not null)
        {
            yield return new Paragraph(
                $"Panel: {PlanFormat.Rectangle(plan.Panel.Width, plan.Panel.Depth)}, {PlanFormat.Millimetres(plan.Panel.Thickness)} {plan.Panel.Material}.");
        }

        foreach (var upright in workshop.Uprights)
        {
            yield return new Paragraph($"{Sentence.Begin(upright.Name)}: {PlanFormat.Rectangle(upright.Width, upright.Height)}, {upright.Sheet.Material}.");
        }

        if (workshop.SheetCuts.Sheets.Count > 0)
        {
            yield return new Paragraph(Proof(workshop.SheetCuts.Proof));
        }

        foreach (var sheet in workshop.SheetCuts.Sheets)
        {
            yield return new DrawingBlock(SheetCutDrawing.Of(sheet));
        }

        foreach (var missing in workshop.SheetCuts.Uncut)
        {
            yield return new Caution(UncutText.Of(missing), "Not cut");
        }

        yield return new Caution(UsualCautions.CuttingAcrylic);
    }

    private static IEnumerable<Block> Fittings(FramePlan frame)
    {
        yield return new Heading("Fittings", 2);
        yield return new Table(
            [
                new Column("Fitting"), new Column("Count", ColumnKind.Right), new Column("Take-off, mm", ColumnKind.Decimal), new Column("Mass each", ColumnKind.Right),
            ],
            [.. frame.Fittings.Select(fitting => new TableRow(
                [fitting.Name, Text(fitting.Count), Millimetres(fitting.TakeOff), PlanFormat.Mass(fitting.MassEach)]))]);
    }

    private static IEnumerable<Block> Parts(Workshop workshop)
    {
        yield return new Heading("To buy or take from the shelf", 2);
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("Item"), new Column("Count", ColumnKind.Right),
                new Column($"Each, {workshop.Currency}", ColumnKind.Decimal), new Column($"Together, {workshop.Currency}", ColumnKind.Decimal),
            ],
            [
                .. workshop.Shopping.Select(line => new TableRow(["tick", line.Item, Text(line.Count), Money(line.PriceEach), Money(line.Total)])),
                new TableRow(
                    workshop.TotalCost is { } total ? ["", "Sum", "", "", Money(total)] : ["", "No sum: some prices are missing.", "", "", ""], Total: true),
            ]);
    }

    private static string Proof(CutProof proof)
    {
        var standing = proof.ProvenOptimal
            ? "No plan can be better."
            : proof.Gap is { } gap ? $"A better plan may exist: at most {PlanFormat.Percent((double)gap)} better." : "Not every piece is cut.";
        return $"Planned by {proof.Method}. {standing}";
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Millimetres(UnitsNet.Length length) => length.Millimeters.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Money(decimal? price) => price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "?";
}
