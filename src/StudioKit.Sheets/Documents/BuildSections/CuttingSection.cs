using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The pieces of pipe, and which is cut from which bar in which order.</summary>
internal static class CuttingSection
{
    private const int RowsInAColumn = 24;

    public static IEnumerable<Block> Pieces(FramePlan frame)
    {
        yield return new Heading("Pieces of pipe, for one studio", 2);
        yield return new Table(
            [new Column("Letter"), new Column("Count", ColumnKind.Right), new Column($"Cut to, {FigureFormat.FigureUnit}", ColumnKind.Right), new Column("Labels to write on them")],
            [.. frame.Pieces.Select(piece => new TableRow([piece.Group, BuildFigures.Count(piece.Count), CutFormat.PieceFigure(piece.Rounded), string.Join(", ", piece.Members)]))]);
    }

    public static IEnumerable<Block> Bars(Plan plan, Workshop workshop)
    {
        var cuts = workshop.PipeCuts;
        yield return new Heading("Which piece from which bar", 2);
        yield return new Caution(UsualCautions.SawingPipe);
        yield return new Paragraph(
            "Mark all cuts of a bar from its squared end before you saw, so that errors do not add, and cut from that end: short pieces come off first, while the bar is long enough to be clamped. "
            + $"Saw beyond the mark: the kerf, the width of the saw's cut, is counted there with {CutFormat.CutLength(plan.Kit.Stock.Kerf)}. {CutFormat.PieceRule}{(CutFormat.PieceRule.Length > 0 ? " " : "")}{ProofText.Of(cuts.Proof)}");
        foreach (var pattern in cuts.Bars.Count == 0 ? [] : BarCutDrawing.EachPattern(cuts))
        {
            yield return new DrawingBlock(pattern, Caption: "");
        }

        foreach (var missing in cuts.Uncut)
        {
            yield return new Caution(UncutText.Of(missing), "Not cut");
        }

        foreach (var block in Order(cuts))
        {
            yield return block;
        }
    }

    // Once for all bars that are cut alike, two columns beside each other.
    private static IEnumerable<Block> Order(BarCutPlan cuts)
    {
        if (cuts.Bars.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Order of cutting", 3);
        foreach (var page in cuts.Bars.GroupBy(bar => bar.Pattern).OrderBy(alike => alike.Key).SelectMany(Rows).Chunk(2 * RowsInAColumn))
        {
            var half = (page.Length + 1) / 2;
            yield return new SideBySide([.. new[] { page.Take(half), page.Skip(half) }.Select(rows => ((Block)new Table(
                [new Column("Bar"), new Column("Cut", ColumnKind.Right), new Column("Piece"), new Column($"Long, {FigureFormat.FigureUnit}", ColumnKind.Right), new Column($"Mark at, {FigureFormat.FigureUnit}", ColumnKind.Right)],
                [.. rows]), 1.0))]);
        }
    }

    private static IEnumerable<TableRow> Rows(IEnumerable<CutBar> alike)
    {
        var bars = string.Join(", ", alike.Select(bar => BuildFigures.Count(bar.Number)));
        var bar = alike.First();
        return bar.Marks.Zip(bar.InchMarks, (mark, inches) => (Mark: mark, Inches: inches)).Select((pair, i) => new TableRow(
            [bars, BuildFigures.Count(i + 1), pair.Mark.Label, CutFormat.PieceFigure(pair.Mark.Length), CutFormat.MarkFigure(pair.Mark, pair.Inches)]));
    }
}
