using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Signs of a light map and what they mean.</summary>
internal sealed class LightMapLegend(PanelLightPlan light, FramingLightPlan shown, IReadOnlyList<SeenOutlines> seen)
{
    /// <summary>Radius of a framing's number [mm].</summary>
    public const double NumberRadius = 1.8;

    private const double SizePt = 7;
    private const double LineHeight = 4.4;
    private const double SignWidth = 9;
    private const double TextGap = 1.5;
    private const double ColumnWidth = 66;
    private const double ColumnGap = 6;

    // Two lenses at one magnification see almost the same patch, so neighbours must differ in kind of line.
    private static readonly Stroke[] Strokes = [new(0.35), new(0.35, LineStyle.Dashed), new(0.3, LineStyle.Chain)];

    /// <summary>How a cover's foot is drawn.</summary>
    public static Stroke FootStroke { get; } = new(0.6, LineStyle.Dashed);

    /// <summary>How a framing's outline is drawn.</summary>
    public static Stroke StrokeOf(int index) => Strokes[index % Strokes.Length];

    /// <summary>A framing's number in its circle.</summary>
    public static IEnumerable<Primitive> Number(Point at, int index) =>
    [
        new Circle(at, NumberRadius, Stroke.Thin, Fill.White),
        new Label(at, FormattableString.Invariant($"{index + 1}"), 6.5, TextAnchor.Middle, TextRise.Middle, Weight: TextWeight.Bold),
    ];

    /// <summary>Sign of the darkest visible point.</summary>
    public static IEnumerable<Primitive> Darkest(Point at) => [new Circle(at, 1.1, Stroke.Thin, Fill.White), new Circle(at, 0.8, null, Fill.Black)];

    /// <summary>Sign of the brightest visible point.</summary>
    public static IEnumerable<Primitive> Brightest(Point at) => [new Circle(at, 1.1, Stroke.Edge, Fill.White)];

    /// <summary>Sign of the subject's foot.</summary>
    public static IEnumerable<Primitive> Subject(Point at) =>
        [new Line(at.Plus(-1.8, 0), at.Plus(1.8, 0), Stroke.Edge), new Line(at.Plus(0, -1.8), at.Plus(0, 1.8), Stroke.Edge)];

    /// <summary>All signs with their meaning in two columns: framings, then everything else.</summary>
    /// <param name="middle">Between the columns, on paper [mm].</param>
    /// <param name="top">Upper edge [mm].</param>
    public IEnumerable<Primitive> Marks(double middle, double top) =>
        Column(Framings(), middle - ColumnWidth - (ColumnGap / 2), top).Concat(Column(Signs(), middle + (ColumnGap / 2), top));

    private static IEnumerable<Primitive> Column(IEnumerable<(Func<Point, IEnumerable<Primitive>> Sign, string Text)> entries, double left, double top)
    {
        var y = top;
        foreach (var (sign, text) in entries)
        {
            foreach (var mark in sign(new Point(left + (SignWidth / 2), y)))
            {
                yield return mark;
            }

            var shortened = TextWrap.Shortened(text, ColumnWidth - SignWidth - TextGap, SizePt, TextWeight.Regular);
            yield return new Label(new Point(left + SignWidth + TextGap, y), shortened, SizePt, TextAnchor.Start, TextRise.Middle);
            y += LineHeight;
        }
    }

    private IEnumerable<(Func<Point, IEnumerable<Primitive>> Sign, string Text)> Framings() => seen.Select((outline, index) =>
        ((Func<Point, IEnumerable<Primitive>>)(at => Outline(at, index)), outline.Says));

    private IEnumerable<(Func<Point, IEnumerable<Primitive>> Sign, string Text)> Signs()
    {
        yield return (at => Swatch(at, Fill.Grey), "under clipping: stays grey");
        yield return (at => Swatch(at, Fill.LightGrey), $"white, but under the target of {light.TargetMargin.Nominal} stop");
        yield return (at => Swatch(at, Fill.White), "white with margin");
        if (shown.HighestMargin is { } highest)
        {
            yield return (at => Swatch(at, Fill.Hatch), $"over the veil's limit of {highest} stops");
        }

        if (light.Covered.Count > 0)
        {
            yield return (at => [Polygon.Rectangle(new Bounds(at.X - 3, at.Y - 1.2, at.X + 3, at.Y + 1.2), Stroke.Centre)], MarginText.DarkOverPipe);
        }

        yield return (Darkest, $"darkest visible point, {shown.Darkest.Margin} stops{(light.IsOverPipe(shown.Darkest.Place) ? $", {MarginText.OverPipe}" : "")}");
        yield return (Brightest, $"brightest visible point, {shown.Brightest.Margin} stops");
        yield return (Subject, light.Upright is null ? "subject's foot" : "level behind the subject's middle");
        yield return (at => [Polygon.Rectangle(new Bounds(at.X - 3, at.Y - 1.2, at.X + 3, at.Y + 1.2), Stroke.Hidden)], light.Upright is null ? "flash window below" : "flash window behind");
        if (light.Foot is { } foot)
        {
            yield return (at => [Polygon.Rectangle(new Bounds(at.X - 3, at.Y - 1.2, at.X + 3, at.Y + 1.2), FootStroke)], $"foot of the {foot.Name}");
        }
    }

    private static IEnumerable<Primitive> Outline(Point at, int index) =>
        [new Line(at.Plus(-SignWidth / 2, 0), at.Plus(SignWidth / 2, 0), StrokeOf(index)), .. Number(at.Plus(-SignWidth / 2, 0), index)];

    private static IEnumerable<Primitive> Swatch(Point at, Fill fill) =>
        [Polygon.Rectangle(new Bounds(at.X - 3, at.Y - 1.4, at.X + 3, at.Y + 1.4), Stroke.Thin, fill)];
}
