using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Building.Hardware;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The small parts at full size, to be laid on what the shop gave out, with how many and where each is used.</summary>
internal static class HardwareSection
{
    private const double RuleLength = 100;
    private const double LabelPt = 7;
    private const double SketchShare = 0.19;

    public static IEnumerable<Block> Of(Workshop workshop)
    {
        if (workshop.Hardware.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Small parts at full size", 2);
        yield return new Paragraph("Check the rule with one of steel: if it is off, print again at 100 %, not 'fit to page'. Counts are for one studio; the numbers are those of the shopping list. Of what is long, the section and a shortened length are drawn.");
        yield return new DrawingBlock(Rule, TrueScale: true, Caption: "");
        var parts = workshop.Hardware.Select((line, i) => (Line: line, Number: i + 1, Drawing: HardwareDrawing.Of(line))).ToList();
        foreach (var pair in parts.Where(part => part.Drawing is not null).Chunk(2))
        {
            IEnumerable<Block> beside = pair.Length == 1 ? [new Spacer(0)] : [];
            yield return new SideBySide([.. pair.Select(Block (part) => Part(part.Line, part.Number, part.Drawing!)).Concat(beside).Select(block => (block, 1.0))]);
        }

        if (parts.Exists(part => part.Drawing is null))
        {
            yield return new Paragraph("Without a size to be held against, drawn small:", TypeScale.Small);
            yield return new InColumns(new Stack([.. parts.Where(part => part.Drawing is null).Select(part => Small(part.Line, part.Number))]));
        }
    }

    private static Drawing Rule { get; } = new(
        "Rule",
        "A rule of 100 mm",
        [
            new Line(new Point(0, 0), new Point(RuleLength, 0), Stroke.Edge),
            .. Enumerable.Range(0, (int)RuleLength + 1).Select(Primitive (i) => new Line(new Point(i, 0), new Point(i, i % 10 == 0 ? 5 : i % 5 == 0 ? 3.5 : 2), i % 10 == 0 ? Stroke.Edge : Stroke.Thin)),
            .. Enumerable.Range(0, 11).Select(Primitive (i) => new Label(new Point(i * 10, 8), BuildFigures.Count(i * 10), LabelPt, TextAnchor.Middle)),
            new Label(new Point(RuleLength + 5, 3), "100 mm", 9, Weight: TextWeight.Bold),
        ]);

    private static KeepTogether Part(HardwareLine line, int number, Drawing drawing) => new KeepTogether(new Stack(
        [
            new Paragraph(Told(line, number), 9, TextWeight.Bold),
            new DrawingBlock(drawing, TrueScale: true, Caption: ""),
            new Paragraph(Used(line), TypeScale.Small),
        ],
        2));

    private static SideBySide Small(HardwareLine line, int number) => new(
        [(new DrawingBlock(HardwareDrawing.Sketch(line), TrueScale: true, Caption: ""), SketchShare), (new Paragraph($"{Told(line, number)} {Used(line)}", 9), 1 - SketchShare)], 2);

    private static string Told(HardwareLine line, int number) => FormattableString.Invariant($"{number}. {HardwareText.Name(line)}: {Count(line)}.");

    private static string Count(HardwareLine line) => line.ByTheMetre
        ? $"{(line.Count == 1 ? "one piece" : $"{BuildFigures.Count(line.Count)} pieces")}, {DistanceFormat.Metres(line.Whole)} in all"
        : BuildFigures.Count(line.ToBuy(1));

    private static string Used(HardwareLine line) => line.HoleFromMouth is { } mouth
        ? $"Where: {HardwareText.Where(line)}. Drill through fitting and pipe together, pushed home, the hole's middle {CutFormat.CutLength(mouth)} from the fitting's mouth."
        : $"Where: {HardwareText.Where(line)}.";
}
