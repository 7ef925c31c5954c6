using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The pieces of pipe and which bar each is cut from.</summary>
internal static class CuttingSection
{
    public static IEnumerable<Block> Pieces(FramePlan frame, Measures measures)
    {
        yield return new Heading("Pieces of pipe, for one studio", 2);
        var inches = measures.Units == TextUnits.Both && frame.InchPieces.Count == frame.Pieces.Count;
        yield return new Table(
            [
                new Column("Letter"), new Column("Count", ColumnKind.Right), new Column("Cut to, mm", ColumnKind.Decimal),
                .. inches ? [new Column("or, with an inch tape"), new Column("each gap then changes by, mm", ColumnKind.Decimal)] : Array.Empty<Column>(),
                new Column("Labels to write on them"),
            ],
            [.. frame.Pieces.Select((piece, i) => new TableRow(
            [
                piece.Group, BuildFigures.Count(piece.Count), BuildFigures.Number(piece.Rounded.Millimeters),
                .. inches ? [Measures.Inches(frame.InchPieces[i].Rounded.Millimeters), BuildFigures.Number(frame.InchPieces[i].TakenUpPerEnd.Millimeters, "0.00")] : Array.Empty<string>(),
                string.Join(", ", piece.Members),
            ]))]);
        yield return new Caution(UsualCautions.SawingPipe);
    }

    public static IEnumerable<Block> Bars(Workshop workshop)
    {
        yield return new Heading("Stock bars and where to cut them", 2);
        yield return new Paragraph($"Measures run from the squared end to the mark, in millimetres; the saw's kerf lies beyond it. {ProofText.Of(workshop.PipeCuts.Proof)}");
        foreach (var pattern in workshop.PipeCuts.Bars.Count == 0 ? [] : BarCutDrawing.EachPattern(workshop.PipeCuts))
        {
            yield return new DrawingBlock(pattern, Caption: "");
        }
    }
}
