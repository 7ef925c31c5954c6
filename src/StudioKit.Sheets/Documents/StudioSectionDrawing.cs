using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Documents;

/// <summary>Section through the studio: ground, frame, panel, flash, rays to the edges of what is seen, and the camera's lines of sight; laid out at its size on paper.</summary>
internal sealed class StudioSectionDrawing
{
    private const double RoomWidth = 140;
    private const double RoomHeight = 118;

    // Heads are drawn so deep; the plan knows their windows only.
    private const double HeadDepth = 45;

    private const double BesideAxis = 2.5;
    private const double RayRoom = 8;

    private const double NotePt = 7;
    private const double NoteWidth = 80;

    private readonly PanelLightPlan _light;
    private readonly FramingLightPlan? _shown;
    private readonly double _left;
    private readonly double _right;
    private readonly double _top;
    private readonly double _scale;

    private StudioSectionDrawing(PanelLightPlan light)
    {
        (_light, _shown) = (light, light.Hardest);
        var points = Points().Concat(_light.Flashes.SelectMany(flash => flash.Window).Select(place => new Point(place.FromFront.Millimeters, place.Up.Millimeters))).ToList();
        (_left, _right, _top) = (points.Min(point => point.X) - 20, points.Max(point => point.X) + 20, points.Max(point => point.Y) + 10);
        _scale = PaperScale.Of(_right - _left, _top, RoomWidth, RoomHeight);
    }

    private double Back => _light.Section.Reach.Millimeters;

    /// <summary>Draws one set-up, for the framing that is hardest to serve.</summary>
    public static Drawing Of(PanelLightPlan light) => new StudioSectionDrawing(light).Draw();

    private Drawing Draw() => new(
        FormattableString.Invariant($"Section through the studio{(_shown is null ? "" : $", {_shown.Framing}")}, scale 1:{_scale:0}"),
        _light.Upright is { } upright
            ? $"Side view of the set-up {_light.SetUp} with the camera on the left: the {upright} behind the subject, flash {PlanFormat.Millimetres(_light.Flashes[0].Distance)} behind it"
            : $"Side view of the set-up {_light.SetUp} with the camera on the left: panel {PlanFormat.Millimetres(_light.PanelHeight)} over the ground, flash {PlanFormat.Millimetres(_light.Flashes[0].Distance)} under it",
        [
            .. Ground(), .. _light.Section.Pipes.Select(Pipe), .. Rays(), .. Sights(),
            new Polyline([.. _light.Section.Panel.Select(At)], Stroke.Heavy),
            .. _light.Flashes.DistinctBy(flash => flash.Window[0]).Select(Head), .. _light.Upright is null ? Measures() : UprightMeasures(), .. Note(),
        ]);

    private IEnumerable<Point> Points()
    {
        var places = _light.Section.Panel
            .Concat(_light.Section.Pipes.SelectMany(pipe => new[] { pipe.From, pipe.To }))
            .Concat(_shown?.Views.SelectMany(view => new[] { view.Sight.Pupil, view.Sight.Aim }) ?? []);
        return places.Select(place => new Point(place.FromFront.Millimeters, place.Up.Millimeters));
    }

    private Point At(SidePoint place) => At(place.FromFront.Millimeters, place.Up.Millimeters);

    private Point At(double fromFront, double up) => new((fromFront - _left) / _scale, (_top - up) / _scale);

    private IEnumerable<Primitive> Ground()
    {
        var (from, to) = (At(_left, 0), At(_right, 0));
        yield return Polygon.Rectangle(new Bounds(from.X, from.Y, to.X, from.Y + 3), null, Fill.Hatch);
        yield return Polygon.Rectangle(new Bounds(from.X, from.Y + 2.9, to.X, from.Y + 3.4), null, Fill.White);
        yield return new Line(from, to, Stroke.Edge);
    }

    private Primitive Pipe(SidePipe pipe)
    {
        var (from, to) = (At(pipe.From), At(pipe.To));
        var radius = pipe.Diameter.Millimeters / 2 / _scale;
        if (from.DistanceTo(to) < 0.01)
        {
            return new Circle(from, radius, Stroke.Thin, Fill.LightGrey);
        }

        var bar = BarCorners.Of(from, to, radius);
        return new Polygon([bar.FromRight, bar.ToRight, bar.ToLeft, bar.FromLeft], Stroke.Thin, Fill.LightGrey);
    }

    private Polygon Head(FlashBelowPlan flash)
    {
        var (front, back) = (At(flash.Window[0]), At(flash.Window[1]));
        var length = front.DistanceTo(back);
        var depth = (_light.Upright is null ? Math.Min(HeadDepth, flash.OverGround.Millimeters) : HeadDepth) / _scale;
        var (nx, ny) = (-(back.Y - front.Y) / length * depth, (back.X - front.X) / length * depth);
        return new Polygon([front, back, back.Plus(nx, ny), front.Plus(nx, ny)], Stroke.Edge, Fill.Grey);
    }

    // Light to both edges of what the hardest view sees, from the middle of every window.
    private IEnumerable<Primitive> Rays() =>
        from flash in _light.Flashes.DistinctBy(flash => flash.Window[0])
        from end in _shown?.DarkestView.Sight is { } sight ? new[] { sight.Nearest, sight.Farthest } : []
        where end is not null
        select (Primitive)new Line(Middle(flash), At(end.Value), Stroke.Thin);

    private Point Middle(FlashBelowPlan flash)
    {
        var (front, back) = (At(flash.Window[0]), At(flash.Window[1]));
        return new Point((front.X + back.X) / 2, (front.Y + back.Y) / 2);
    }

    private IEnumerable<Primitive> Sights()
    {
        foreach (var view in _shown?.Views.DistinctBy(view => view.Pitch) ?? [])
        {
            var (pupil, aim) = (At(view.Sight.Pupil), At(view.Sight.Aim));
            yield return new Line(pupil, aim, Stroke.Centre);
            foreach (var end in new[] { view.Sight.Nearest, view.Sight.Farthest })
            {
                if (end is { } met)
                {
                    yield return new Line(pupil, At(met), new Stroke(0.18, LineStyle.Dashed));
                }
            }

            foreach (var mark in Camera(pupil, aim, MeasureFormat.Degrees(view.Pitch)))
            {
                yield return mark;
            }

            yield return new Circle(aim, 0.9, null, Fill.Black);
        }
    }

    // A sign for the camera: its lens at the entrance pupil, its body behind.
    private static IEnumerable<Primitive> Camera(Point pupil, Point aim, string pitch)
    {
        var length = pupil.DistanceTo(aim);
        var (ux, uy) = ((pupil.X - aim.X) / length, (pupil.Y - aim.Y) / length);
        Point Corner(double along, double aside) => pupil.Plus((ux * along) - (uy * aside), (uy * along) + (ux * aside));
        yield return new Polygon([Corner(0, -1), Corner(0, 1), Corner(2.5, 1), Corner(2.5, -1)], Stroke.Thin, Fill.White);
        yield return new Polygon([Corner(2.5, -2.2), Corner(2.5, 2.2), Corner(5, 2.2), Corner(5, -2.2)], Stroke.Thin, Fill.Grey);
        yield return new Label(Corner(8.5, 0), pitch, 7.5, TextAnchor.Middle, TextRise.Middle);
    }

    // The flash's distance is written behind its axis, or before it where the ray to the back runs up there and the one to the front leaves room.
    private bool IsBesideRay(Point overFlash) => _shown?.DarkestView.Sight is { Nearest: { } near, Farthest: { } far }
        && Math.Abs(At(far).X - overFlash.X) < RayRoom && overFlash.X - At(near).X > RayRoom;

    private IEnumerable<Primitive> Measures()
    {
        var flash = _light.Flashes[0];
        var (x, up) = (flash.FromFront.Millimeters, flash.OverGround.Millimeters);
        var height = _light.PanelHeight.Millimeters;
        var right = At(_right, 0).X;
        yield return new Dimension(new Point(right, At(0, height).Y), new Point(right, At(0, 0).Y), -9, PlanFormat.Millimetres(_light.PanelHeight));
        yield return new Line(At(Back, height), new Point(right, At(0, height).Y), Stroke.Thin);
        yield return new Dimension(At(x, height), At(x, up), IsBesideRay(At(x, height)) ? BesideAxis : -BesideAxis, PlanFormat.Millimetres(flash.Distance));
        yield return new Dimension(At(0, 0), At(x, 0), 8, PlanFormat.Millimetres(flash.FromFront));
        yield return new Dimension(At(0, 0), At(Back, 0), 15, PlanFormat.WholeMillimetres(UnitsNet.Length.FromMillimeters(Back)));
    }

    // Levels from the subject's foot, heights over the ground, or the panel.
    private IEnumerable<Primitive> UprightMeasures()
    {
        var (sheet, window) = (_light.Section.Panel, _light.Flashes[0].Window);
        var (low, flash) = (sheet[0], new SidePoint((window[0].FromFront + window[1].FromFront) / 2, (window[0].Up + window[1].Up) / 2));
        var right = At(_right, 0);
        yield return new Dimension(At(0, 0), At(low.FromFront.Millimeters, 0), 9, PlanFormat.Millimetres(low.FromFront));
        yield return new Dimension(At(low.FromFront.Millimeters, 0), At(flash.FromFront.Millimeters, 0), 9, PlanFormat.Millimetres(flash.FromFront - low.FromFront));
        yield return new Dimension(new Point(right.X, At(flash).Y), right, -4, PlanFormat.Millimetres(flash.Up));
        yield return new Dimension(new Point(right.X, At(sheet[1]).Y), right, -11, PlanFormat.Millimetres(sheet[1].Up));
        yield return new Line(At(flash), new Point(right.X, At(flash).Y), Stroke.Thin);
        yield return new Line(At(sheet[1]), new Point(right.X, At(sheet[1]).Y), Stroke.Thin);
    }

    private IEnumerable<Primitive> Note()
    {
        if (_shown?.DarkestView.Sight is { } sight)
        {
            var distance = PlanFormat.Millimetres(sight.PupilDistance);
            var text = $"Entrance pupil to subject {distance}. Dashed: edges of the frame. Thin: light to the edges of what the darkest view sees.";
            foreach (var (line, number) in Layout.TextWrap.Lines(text, NoteWidth, NotePt, TextWeight.Regular).Select((line, number) => (line, number)))
            {
                yield return new Label(new Point(0, At(0, 0).Y + 21 + (3.4 * number)), line, NotePt);
            }
        }
    }
}
