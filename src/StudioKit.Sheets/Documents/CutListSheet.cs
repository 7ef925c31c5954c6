using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The cut list and parts list.</summary>
internal static class CutListSheet
{
    public static SheetDocument Make(Plan plan, FramePlan frame, Stamp stamp, PageSetup page) => new(
        "Cut list and parts list",
        stamp,
        page,
        [
            new Heading("Cut list and parts list"),
            new Paragraph($"{frame.PipeName}; {frame.FittingsName}. Pipe and fittings weigh {PlanFormat.Mass(frame.Mass)}."),
            .. Pieces(frame),
            .. PipeCuts(frame.PipeCuts),
            new Caution(UsualCautions.SawingPipe),
            .. SheetCuts(plan, frame),
            .. Parts(frame),
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

    private static IEnumerable<Block> SheetCuts(Plan plan, FramePlan frame)
    {
        yield return new Heading("Panel and sheet goods", 2);
        yield return new Paragraph(
            $"Panel: {PlanFormat.Rectangle(plan.Panel.Width, plan.Panel.Depth)}, {PlanFormat.Millimetres(plan.Panel.Thickness)} {plan.Panel.Material}.");
        if (frame.SheetCuts.Sheets.Count > 0)
        {
            yield return new Paragraph(Proof(frame.SheetCuts.Proof));
        }

        foreach (var sheet in frame.SheetCuts.Sheets)
        {
            yield return new DrawingBlock(SheetCutDrawing.Of(sheet));
        }

        foreach (var missing in frame.SheetCuts.Uncut)
        {
            yield return new Caution(UncutText.Of(missing), "Not cut");
        }

        yield return new Caution(UsualCautions.CuttingAcrylic);
    }

    private static IEnumerable<Block> Parts(FramePlan frame)
    {
        yield return new Heading("Fittings", 2);
        yield return new Table(
            [
                new Column("Fitting"), new Column("Count", ColumnKind.Right), new Column("Take-off, mm", ColumnKind.Decimal), new Column("Mass each", ColumnKind.Right),
            ],
            [.. frame.Fittings.Select(fitting => new TableRow(
                [fitting.Name, Text(fitting.Count), Millimetres(fitting.TakeOff), PlanFormat.Mass(fitting.MassEach)]))]);
        yield return new Heading("To buy or take from the shelf", 2);
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("Item"), new Column("Count", ColumnKind.Right),
                new Column($"Each, {frame.Currency}", ColumnKind.Decimal), new Column($"Together, {frame.Currency}", ColumnKind.Decimal),
            ],
            [
                .. frame.Shopping.Select(line => new TableRow(["tick", line.Item, Text(line.Count), Money(line.PriceEach), Money(line.Total)])),
                new TableRow(
                    frame.TotalCost is { } total ? ["", "Sum", "", "", Money(total)] : ["", "No sum: some prices are missing.", "", "", ""], Total: true),
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
