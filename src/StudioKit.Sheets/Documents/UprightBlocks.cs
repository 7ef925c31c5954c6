using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The upright sheets on the build sheet: each with its views, parts, steps and wind.</summary>
internal static class UprightBlocks
{
    private const double StepTall = 52;
    private const double PackingTall = 34;

    /// <summary>Their pieces of pipe; nothing where there are none.</summary>
    public static IEnumerable<Block> Pieces(IReadOnlyList<UprightStandPlan> uprights)
    {
        if (uprights.Count > 0)
        {
            yield return new Heading("Pieces of pipe for the upright sheets, for one studio", 2);
            yield return new Table(
                [new Column("Write on them"), new Column("Count", ColumnKind.Right), new Column($"Cut to, {FigureFormat.FigureUnit}", ColumnKind.Decimal)],
                [.. uprights.SelectMany(upright => upright.Pieces).Select(piece => new TableRow([piece.Label, Text(piece.Count), CutFormat.PieceFigure(piece.Cut)]))]);
        }
    }

    /// <summary>A page or two for each.</summary>
    public static IEnumerable<Block> Of(IReadOnlyList<UprightStandPlan> uprights) => uprights.SelectMany(upright => Of(upright));

    /// <summary>Their drawings as files.</summary>
    public static IEnumerable<NamedDrawing> Drawings(IReadOnlyList<UprightStandPlan> uprights) => uprights.SelectMany((upright, i) => (NamedDrawing[])
    [
        new(FormattableString.Invariant($"upright-{i + 1}-front"), UprightDrawing.Front(upright)),
        new(FormattableString.Invariant($"upright-{i + 1}-side"), UprightDrawing.Side(upright)),
    ]);

    private static IEnumerable<Block> Of(UprightStandPlan upright)
    {
        yield return new Heading($"Upright sheet: {upright.Name}", 2);
        yield return new Paragraph(Summary(upright));
        yield return new Caution($"{UprightWindText.Of(upright)} What gives first: {UprightWeakness.Of(upright.Weakest)}.", "Wind");
        foreach (var views in SideBySide.Rows([new DrawingBlock(UprightDrawing.Front(upright), MaxHeight: 85), new DrawingBlock(UprightDrawing.Side(upright), MaxHeight: 85)]))
        {
            yield return views;
        }

        yield return new Heading("Parts", 3);
        yield return Parts(upright);
        yield return new Heading("Putting it up", 3);
        foreach (var row in SideBySide.Rows(upright.Assembly.Select((step, i) =>
            StepBlock.Of(i + 1, UprightStepText.Title(step), UprightStepText.Of(step, upright), StepBlock.Fitted(UprightDrawing.Step(upright, step), StepTall)))))
        {
            yield return row;
        }

        yield return new Heading("Packing down", 3);
        yield return new Paragraph("What is heavy comes off.", TypeScale.Small);
        foreach (var row in SideBySide.Rows(upright.PackingDown.Select((step, i) => Packed(upright, step, i + 1))))
        {
            yield return row;
        }
    }

    private static Block Packed(UprightStandPlan upright, UprightPackingStep step, int number)
    {
        var (title, words) = (UprightStepText.Title(step), UprightStepText.Of(step, upright));
        return UprightDrawing.Packing(upright, step) is { } drawing
            ? StepBlock.Of(number, title, words, StepBlock.Fitted(drawing, PackingTall))
            : StepBlock.Of(number, title, words);
    }

    private static string Summary(UprightStandPlan upright) =>
        $"{CutFormat.CutLength(upright.Width)} × {CutFormat.CutLength(upright.Height)} of {upright.Sheet.MaterialName}, held by {UprightStepText.Carrier(upright.Carrier)}. "
        + $"Sheet {MeasureFormat.Mass(upright.SheetMass)}, pipe and fittings {MeasureFormat.Mass(upright.CarrierMass)}"
        + (upright.Ballast > UnitsNet.Mass.Zero ? $", on its feet {MeasureFormat.Mass(upright.Ballast)}. " : ". ")
        + $"In the gust of {MeasureFormat.Speed(upright.Wind.Gust)} its top leans {PlanFormat.WholeMillimetres(upright.TopLean)} and its middle bows {PlanFormat.WholeMillimetres(upright.Bow)}.";

    private static Table Parts(UprightStandPlan upright) => new(
        [new Column("Part"), new Column("Count", ColumnKind.Right), new Column("Measure")],
        [
            .. upright.Pieces.Select(piece => Row(piece.Label, piece.Count, $"cut to {CutFormat.PieceLength(piece.Cut)}")),
            .. upright.Fittings.Select(fitting => Row(fitting.Name, fitting.Count, "")),
            Row("sheet", 1, $"{CutFormat.CutLength(upright.Width)} × {CutFormat.CutLength(upright.Height)}"),
            Row("clip from sheet to pipe", upright.SheetClips, FormattableString.Invariant($"{upright.ClipsPerPole} on each pole, {CutFormat.CutLength(Whole(upright.ClipSpacing))} apart{(upright.CornersOnClips ? ", and one under each lower corner" : "")}")),
            .. upright.PipeClips > 0 ? [Row("clip from pipe to pipe", upright.PipeClips, "poles to rail and bar, bar to legs")] : Array.Empty<TableRow>(),
            .. upright.Cords > 0 ? [Row("cord with its peg", upright.Cords, $"{CutFormat.CutLength(Whole(upright.CordLength))} each")] : Array.Empty<TableRow>(),
        ]);

    private static TableRow Row(string part, int count, string measure) => new([part, Text(count), measure]);

    private static UnitsNet.Length Whole(UnitsNet.Length length) => UnitsNet.Length.FromMillimeters(Math.Round(length.Millimeters));

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

}
