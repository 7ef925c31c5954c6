using StudioKit.Physics.Light;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using UnitsNet;

namespace StudioKit.Sheets.Documents;

/// <summary>White margin over the panel as filled contours, with what each framing sees of it; laid out at its size on paper.</summary>
internal sealed class LightMapDrawing
{
    private const double RoomWidth = 158;
    private const double RoomHeight = 112;
    private const double LevelPt = 6.5;

    // A shorter contour line has no room for its number.
    private const double ShortestLabelled = 12;

    private readonly PanelLightPlan _light;
    private readonly FramingLightPlan _shown;
    private readonly double _scale;
    private readonly FreePlaces _free = new();

    private LightMapDrawing(PanelLightPlan light, FramingLightPlan shown)
    {
        (_light, _shown) = (light, shown);
        _scale = PaperScale.Of(Width, Depth, RoomWidth, RoomHeight);
    }

    private double Width => _light.PanelWidth.Millimeters;

    private double Depth => _light.PanelDepth.Millimeters;

    private Bounds Sheet => new(0, 0, Width / _scale, Depth / _scale);

    /// <summary>The map of the framing that is hardest to serve; none where nothing was worked out.</summary>
    public static Drawing? Of(PanelLightPlan light) => light.Hardest is { } hardest ? new LightMapDrawing(light, hardest).Draw() : null;

    private Drawing Draw()
    {
        TakeSpots();
        var bands = Bands().ToList();
        var lines = _shown.Grid.ContourLevels.SelectMany(Contours).ToList();
        var seen = SeenOutlines.Of(_light.Framings);
        var patches = seen.SelectMany((outline, index) => Patch(outline.Widest, index)).ToList();
        return new Drawing(
            FormattableString.Invariant($"White margin{(_light.Upright is null ? "" : " of the upright sheet")} at {_shown.Mark.Nominal} power for {_shown.Framing}, scale 1:{_scale:0}"),
            $"Stops above clipping over {(_light.Upright is { } upright ? $"the {upright}" : "the panel")} of the set-up {_light.SetUp}, from {_shown.Darkest.Margin} to {_shown.Brightest.Margin} where {_shown.Framing} looks, with the outline of what each framing sees",
            [
                .. bands, .. lines.Where(mark => mark is Polyline), .. patches.Where(mark => mark is Polygon), .. Covered(), .. Flashes(), .. Foot(),
                .. lines.Where(mark => mark is not Polyline), .. patches.Where(mark => mark is not Polygon), .. Spots(), .. Frame(),
                .. new LightMapLegend(_light, _shown, seen).Marks(Sheet.Right / 2, Sheet.Bottom + 17),
            ]);
    }

    /// <summary>A place of the panel on paper, its front edge at the bottom.</summary>
    private Point At(double fromLeft, double fromFront) => new(fromLeft / _scale, (Depth - fromFront) / _scale);

    private Point At(PanelPlace place) => At(((_light.PanelWidth / 2) + place.Across).Millimeters, place.AlongSheet.Millimeters);

    private Point AtNode(Point node) => At(
        node.X / (_shown.Grid.Columns - 1) * Width, node.Y / (_shown.Grid.Rows - 1) * Depth);

    // Painted from the darkest up: each band covers the one under it.
    private IEnumerable<Primitive> Bands()
    {
        yield return Polygon.Rectangle(Sheet, null, Fill.Grey);
        (double Level, Fill Fill)[] bands = [(0, Fill.LightGrey), (_light.TargetMargin.Value, Fill.White), (_shown.HighestMargin?.Value ?? double.MaxValue, Fill.Hatch)];
        foreach (var (level, fill) in bands)
        {
            if (Region(level) is { Count: > 2 } region)
            {
                yield return new Polygon(region, null, fill);
            }
        }
    }

    // Outlines are strung on one thread that runs to each and back, so that the even-odd rule keeps holes open.
    private List<Point> Region(double level)
    {
        List<Point> thread = [];
        foreach (var ring in new MarginContours(_shown.Grid).Rings(level))
        {
            thread.AddRange(ring.Select(AtNode));
            thread.Add(AtNode(ring[0]));
            thread.Add(thread[0]);
        }

        return thread;
    }

    private IEnumerable<Primitive> Contours(Physics.Exposure.Stops level)
    {
        foreach (var line in new MarginContours(_shown.Grid).Lines(level.Value))
        {
            var points = line.Select(AtNode).ToList();
            yield return new Polyline(points, level.Value == 0 ? Stroke.Edge : Stroke.Thin);
            if (Bounds.Of(points) is { Width: < ShortestLabelled, Height: < ShortestLabelled })
            {
                continue;
            }

            foreach (var mark in LevelLabel(points, level.Nominal))
            {
                yield return mark;
            }
        }
    }

    private IEnumerable<Primitive> LevelLabel(IReadOnlyList<Point> line, string text)
    {
        var half = (TextMeter.Width(text, LevelPt, TextWeight.Regular) / 2) + 0.5;
        Bounds Around(Point at) => new(at.X - half, at.Y - 1.4, at.X + half, at.Y + 1.4);
        var inside = Spread(line).Where(at => IsWithin(Around(at), Sheet));
        if (_free.FirstFree(inside, Around) is { } place)
        {
            yield return Polygon.Rectangle(Around(place), null, Fill.White);
            yield return new Label(place, text, LevelPt, TextAnchor.Middle, TextRise.Middle);
        }
    }

    // Of each framing the outline around all its camera angles; its number stands on the outline.
    private IEnumerable<Primitive> Patch(FramingLightPlan framing, int index)
    {
        if (framing.Outline.Count < 3)
        {
            yield break;
        }

        var outline = framing.Outline.Select(At).ToList();
        yield return new Polygon(outline, LightMapLegend.StrokeOf(index));
        Bounds Around(Point at) => new(at.X - LightMapLegend.NumberRadius, at.Y - LightMapLegend.NumberRadius, at.X + LightMapLegend.NumberRadius, at.Y + LightMapLegend.NumberRadius);
        var place = _free.FirstFree(Spread(Dense(outline)), Around) ?? outline[0];
        foreach (var mark in LightMapLegend.Number(place, index))
        {
            yield return mark;
        }
    }

    private IEnumerable<Primitive> Covered() => _light.Covered.Select(strip => new Polygon([.. strip.Corners.Select(At)], Stroke.Centre));

    private IEnumerable<Primitive> Flashes() => _light.Flashes.SelectMany(flash =>
    {
        var (x, y) = (flash.FromLeft.Millimeters, flash.FromFront.Millimeters);
        var (w, h) = (flash.WindowWidth.Millimeters / 2, flash.WindowHeight.Millimeters / 2);
        var (from, to) = (At(x - w, y + h), At(x + w, y - h));
        return new Primitive[] { Polygon.Rectangle(new Bounds(from.X, from.Y, to.X, to.Y), Stroke.Hidden) };
    });

    private IEnumerable<Primitive> Foot()
    {
        if (_light.Foot is not { } foot)
        {
            yield break;
        }

        var (half, deep) = (foot.Width.Millimeters / 2 / _scale, foot.Depth.Millimeters / 2 / _scale);
        yield return foot.IsRound
            ? new Circle(Subject, half, LightMapLegend.FootStroke)
            : Polygon.Rectangle(new Bounds(Subject.X - half, Subject.Y - deep, Subject.X + half, Subject.Y + deep), LightMapLegend.FootStroke);
    }

    private void TakeSpots()
    {
        foreach (var at in new[] { At(_shown.Darkest.Place), At(_shown.Brightest.Place), Subject })
        {
            _free.Take(new Bounds(at.X - 2, at.Y - 2, at.X + 2, at.Y + 2));
        }

        if (_light.SweptLength > Length.Zero)
        {
            var bend = At(0, _light.FlatDepth.Millimeters);
            _free.Take(new Bounds(0, bend.Y - 4, 23, bend.Y));
        }
    }

    private Point Subject => At(Width / 2, _light.SubjectFromFront.Millimeters);

    private IEnumerable<Primitive> Spots() =>
    [
        .. LightMapLegend.Darkest(At(_shown.Darkest.Place)),
        .. LightMapLegend.Brightest(At(_shown.Brightest.Place)),
        .. LightMapLegend.Subject(Subject),
    ];

    private IEnumerable<Primitive> Frame()
    {
        yield return Polygon.Rectangle(Sheet, Stroke.Heavy);
        yield return new Dimension(At(0, 0), At(Width, 0), 6, PlanFormat.Millimetres(_light.PanelWidth));
        yield return new Dimension(At(0, Depth), At(0, 0), 6, PlanFormat.Millimetres(_light.PanelDepth));
        yield return new Label(new Point(Sheet.Right / 2, Sheet.Bottom + 11.5), _light.Upright is null ? "front, towards the camera" : "lower edge, as the camera sees it", 7, TextAnchor.Middle);
        if (_light.SweptLength > Length.Zero)
        {
            var bend = _light.FlatDepth.Millimeters;
            yield return new Line(At(0, bend), At(Width, bend), Stroke.Centre);
            yield return Polygon.Rectangle(new Bounds(1, At(0, bend).Y - 4, 23, At(0, bend).Y - 0.5), null, Fill.White);
            yield return new Label(At(0, bend).Plus(1.5, -1.5), "swept up from here", LevelPt);
        }
    }

    // From the middle of a line outwards, so that labels of neighbouring lines do not all stand at their ends.
    private static IEnumerable<Point> Spread(IReadOnlyList<Point> line) =>
        Enumerable.Range(0, line.Count).OrderBy(i => (i * 7) % Math.Max(1, line.Count)).Select(i => line[i]);

    private static List<Point> Dense(List<Point> outline) =>
        [.. outline.SelectMany((from, i) => Enumerable.Range(0, 6).Select(step => Between(from, outline[(i + 1) % outline.Count], step / 6.0)))];

    private static Point Between(Point from, Point to, double share) => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    private static bool IsWithin(Bounds inner, Bounds outer) =>
        inner.Left > outer.Left && inner.Right < outer.Right && inner.Top > outer.Top && inner.Bottom < outer.Bottom;
}
