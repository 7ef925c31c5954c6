using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Documents;

/// <summary>Stock bars with their cuts: lengths to one scale, running measures from the squared end at every cut.</summary>
internal static class BarCutDrawing
{
    private const double LongestOnPaper = 150;
    private const double BarHeight = 6;
    private const double Pitch = 25;
    private const double LabelPt = 8;
    private const double MeasurePt = 7;
    private const double MeasureSpacing = 2.8;
    private const double LeaderEnd = 2.6;

    /// <summary>All ways of cutting under each other.</summary>
    public static Drawing Of(BarCutPlan plan)
    {
        var patterns = EachPattern(plan);
        return new Drawing(
            "Pipe cuts",
            $"{plan.TotalBars} bars in {patterns.Count} ways of cutting",
            [.. patterns.SelectMany((pattern, i) => pattern.Shifted(0, i * Pitch).Marks)]);
    }

    /// <summary>One drawing for each way of cutting, all at one scale.</summary>
    public static IReadOnlyList<Drawing> EachPattern(BarCutPlan plan)
    {
        var scale = LongestOnPaper / plan.Bars.Max(bar => bar.StockLength.Millimeters);
        return [.. plan.Bars.GroupBy(bar => bar.Pattern).OrderBy(group => group.Key).Select(group =>
            new Drawing($"Way of cutting {group.Key}", $"{group.Count()} bars cut alike", [.. Bar([.. group], scale)]))];
    }

    private static IEnumerable<Primitive> Bar(List<CutBar> alike, double scale)
    {
        var bar = alike[0];
        var title = alike.Count == 1
            ? FormattableString.Invariant($"Bar {bar.Number}: {PlanFormat.AsSold(bar.StockLength)}")
            : FormattableString.Invariant($"Bars {string.Join(", ", alike.Select(same => same.Number))}: {PlanFormat.AsSold(bar.StockLength)}, {alike.Count} cut alike");
        yield return new Label(new Point(0, -2), title, LabelPt, Weight: TextWeight.Bold);

        // Where nothing is squared off, the bar's own end is the zero of the running measures.
        var end = bar.Marks.Count == 0 ? 0 : bar.Marks[^1].End.Millimeters;
        var start = bar.Trim.Millimeters * scale;
        yield return Polygon.Rectangle(new Bounds(start + (end * scale), 0, bar.StockLength.Millimeters * scale, BarHeight), Stroke.Edge, Fill.Hatch);
        foreach (var mark in bar.Marks.SelectMany(mark => Piece(mark, start, scale)).Concat(Measures(bar, start, scale)))
        {
            yield return mark;
        }

        yield return Polygon.Rectangle(new Bounds(0, 0, bar.StockLength.Millimeters * scale, BarHeight), Stroke.Edge);
    }

    private static IEnumerable<Primitive> Piece(CutMark mark, double start, double scale)
    {
        var (left, right) = (start + (mark.Start.Millimeters * scale), start + (mark.End.Millimeters * scale));
        yield return new Line(new Point(right, -1), new Point(right, BarHeight + 1), Stroke.Edge);
        if (HoldsLabel(mark, scale))
        {
            yield return new Label(
                new Point((left + right) / 2, BarHeight / 2), mark.Label, LabelPt, TextAnchor.Middle, TextRise.Middle, Weight: TextWeight.Bold);
        }
    }

    private static bool HoldsLabel(CutMark mark, double scale) =>
        TextMeter.Width(mark.Label, LabelPt, TextWeight.Bold) <= (mark.Length.Millimeters * scale) - 1;

    // A piece too short for its name has it before its measure.
    private static string MeasureText(CutMark mark, CutMark inches, double scale) => HoldsLabel(mark, scale)
        ? CutFormat.MarkFigure(mark, inches)
        : $"{mark.Label}: {CutFormat.MarkFigure(mark, inches)}";

    // Measures closer together than a line of type are spread out, each led to its cut.
    private static IEnumerable<Primitive> Measures(CutBar bar, double start, double scale)
    {
        var x = double.NegativeInfinity;
        foreach (var (measure, text) in bar.Marks.Zip(bar.InchMarks, (mark, inches) => (mark.End.Millimeters, MeasureText(mark, inches, scale))).Prepend((0, "0")))
        {
            var cut = start + (measure * scale);
            x = Math.Max(cut, x + MeasureSpacing);
            yield return new Line(new Point(cut, BarHeight + 1), new Point(x, BarHeight + LeaderEnd), Stroke.Thin);
            yield return new Label(
                new Point(x, BarHeight + LeaderEnd + 0.5), text, MeasurePt, TextAnchor.End, TextRise.Middle, -Math.PI / 2);
        }
    }
}
