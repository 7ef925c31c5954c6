using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;
using UnitsNet;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>What take-off is, how to measure it on the fittings that were bought, and what to cut where theirs is another.</summary>
internal static class TakeOffSection
{
    public static IEnumerable<Block> Of(FramePlan frame)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        var shown = TakeOffDrawing.Shown(frame);
        yield return new Heading("Before you cut: the take-off of your fittings", 2);
        yield return new Paragraph($"Take-off is what a fitting takes off a pipe: from its middle, where the pipes' middle lines meet, to the stop in its socket. {Gap(frame)}So a piece is cut to middle to middle, less the take-off{(frame.InsertionGap > Length.Zero ? " and the gap" : "")} at either end. {Example(frame)}");
        yield return Fittings(frame);
        yield return new DrawingBlock(TakeOffDrawing.Of(frame, shown), MaxHeight: 80, Caption: $"{Sentence(shown.Name)}, cut open: what take-off is, and the first way to measure it");
        yield return new SideBySide([(new DrawingBlock(TakeOffDrawing.ByPiece(frame, shown), MaxHeight: 70, Caption: "The second way to measure it"), 1.0), (new ItemList(Ways, ItemMarker.Number), 1.5)]);
        foreach (var block in Tables(frame.TakeOffs))
        {
            yield return block;
        }
    }

    private static readonly string[] Ways =
    [
        "With a rule: measure m from mouth to mouth, and with a stick the depth d of a socket to its stop. Take-off = m / 2 - d. Of a corner or elbow, measure from a mouth to the far outside, take off half of the outside diameter of the fitting, then d.",
        "With a piece of pipe of length p: push a fitting home on both its ends and a pipe into both branches; measure c from the left edge of one to the left edge of the other. Take-off with its gap = (c - p) / 2.",
    ];

    private static string Gap(FramePlan frame) => frame.InsertionGap > Length.Zero
        ? $"A dry push stops {CutFormat.CutLength(frame.InsertionGap)} before it, which is the gap. "
        : "";

    // The first letter, as the cut list has it.
    private static string Example(FramePlan frame)
    {
        var member = frame.Geometry.Members[0];
        var off = new[] { member.TakeOffFrom, member.TakeOffTo }.Concat(member.InsertionGap > Length.Zero ? [member.InsertionGap, member.InsertionGap] : Array.Empty<Length>());
        return $"{member.Label}: {CutFormat.CutLength(member.CentreLine)}, less {string.Join(", ", off.Select(CutFormat.CutLength))}, is {CutFormat.PieceLength(frame.Pieces[0].Rounded)}.";
    }

    private static Table Fittings(FramePlan frame) => new(
        [
            new Column("Fitting"), new Column("Count", ColumnKind.Right), new Column($"Take-off planned, {FigureFormat.FigureUnit}", ColumnKind.Right), new Column($"Middle to pipe's end, {FigureFormat.FigureUnit}", ColumnKind.Right),
            new Column($"Pipe's end to mark, {FigureFormat.FigureUnit}", ColumnKind.Right), new Column("Mass each", ColumnKind.Right), new Column("Yours, measured"),
        ],
        [.. frame.Fittings.Select(fitting => new TableRow(
            [
                fitting.Name, BuildFigures.Count(fitting.Count), CutFormat.CutFigure(fitting.TakeOff), CutFormat.CutFigure(fitting.ToPipeEnd), CutFormat.CutFigure(fitting.ToMark - fitting.ToPipeEnd), MeasureFormat.Mass(fitting.MassEach),
                fitting.Kind == FittingKind.Cap ? "no need" : "",
            ]))]);

    private static IEnumerable<Block> Tables(ValueList<TakeOffTable> tables)
    {
        if (tables.Count == 0)
        {
            yield break;
        }

        yield return new Paragraph("If yours differ, cut these lengths in place of those of the cut list, and all other pieces as it says; the frame keeps its size, and where a low leg changes by a few millimetres its foot takes that up. Where two kinds differ, or one by more than is shown, write the take-offs into the kit and make the plan again.");
        foreach (var table in tables)
        {
            yield return new KeepTogether(new Stack([new Paragraph($"{Sentence(table.Name)}: cut to, {FigureFormat.FigureUnit}", 9, Fonts.TextWeight.Bold), Set(table)], 1));
        }
    }

    private static Table Set(TakeOffTable table) => new(
        [
            new Column("Piece"), .. table.TakeOffs.Where(takeOff => takeOff < table.Planned).Select(Measured), new Column($"as planned: {CutFormat.CutFigure(table.Planned)}", ColumnKind.Right),
            .. table.TakeOffs.Where(takeOff => takeOff > table.Planned).Select(Measured),
        ],
        [.. table.Pieces.Select(piece => new TableRow(
            [
                piece.Pieces, .. Cuts(table, piece, takeOff => takeOff < table.Planned), CutFormat.PieceFigure(piece.Planned), .. Cuts(table, piece, takeOff => takeOff > table.Planned),
            ]))]);

    private static Column Measured(Length takeOff) => new($"measured {CutFormat.CutFigure(takeOff)}", ColumnKind.Right);

    private static IEnumerable<string> Cuts(TakeOffTable table, TakeOffPiece piece, Func<Length, bool> among) =>
        table.TakeOffs.Zip(piece.Cuts).Where(pair => among(pair.First)).Select(pair => pair.Second is { } cut ? CutFormat.PieceFigure(cut) : "plan again");

    private static string Sentence(string words) => Wording.Sentence.Begin(words);
}
