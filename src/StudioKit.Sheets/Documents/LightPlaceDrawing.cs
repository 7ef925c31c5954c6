using StudioKit.Kits.Lighting;
using StudioKit.Planning;
using StudioKit.Planning.Standing;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the lights about the subject stand, from above and from the right, side by side: where to hold them, at one glance.</summary>
/// <remarks>From above the camera is at the foot, on a clock about the subject; from the right it is at the left. Both have one scale.</remarks>
internal sealed class LightPlaceDrawing
{
    private const double LabelPt = TypeScale.Smallest;
    private const double Gap = 2;
    private const double LeastFront = 3;
    private const double LeastDepth = 1.4;

    // Under this a light is seen from its back or front, not from its side.
    private const double SeenHeadOn = 0.2;

    private readonly IReadOnlyList<LightStandPlan> _stands;
    private readonly IReadOnlyList<Angle> _pitches;
    private readonly bool _onSheet;
    private readonly double _width;
    private readonly double _height;
    private readonly double _reach;
    private readonly double _scale;

    private LightPlaceDrawing(IReadOnlyList<LightStandPlan> stands, IReadOnlyList<Angle> pitches, bool onSheet, double width, double height)
    {
        (_stands, _pitches, _onSheet, _width, _height) = (stands, pitches, onSheet, (width - Gap) / 2, height);
        _reach = Math.Min((_height / 2) - 3.2, (_width / 2) - 5);
        _scale = _reach / stands.Max(stand => stand.Distance.Millimeters);
    }

    private Point Above => new(_width / 2, _height / 2);

    // Lights stand over the subject more often than under it.
    private Point Side => new((1.5 * _width) + Gap, _stands.Any(stand => stand.Up.Millimeters < -1) ? _height / 2 : Math.Min(_height - 5, (_height / 2) + (_reach / 2)));

    /// <summary>Both views in a room.</summary>
    /// <param name="stands">The lights of one exposure; at least one.</param>
    /// <param name="pitches">The camera's angles.</param>
    /// <param name="onSheet">Whether the subject sits on the sheet.</param>
    /// <param name="width">Room across [mm].</param>
    /// <param name="height">Room down [mm].</param>
    public static Drawing Of(IReadOnlyList<LightStandPlan> stands, IReadOnlyList<Angle> pitches, bool onSheet, double width, double height) =>
        new LightPlaceDrawing(stands, pitches, onSheet, width, height).Drawn();

    private Drawing Drawn() => new(
        "Where the lights stand, from above and from the right",
        string.Join("; ", _stands.Select(stand => $"{RoleText.Word(stand.Role)} {StandText.Where(stand)}")),
        [
            .. Clock(), .. CameraFromAbove(), .. Subject(Above), .. Level(), .. CameraFromSide(), .. Subject(Side),
            .. _stands.SelectMany(stand => Light(stand, Above, stand.Right.Millimeters, -stand.Back.Millimeters, point => (point.Right.Millimeters, -point.Back.Millimeters))),
            .. _stands.SelectMany(stand => Light(stand, Side, stand.Back.Millimeters, -stand.Up.Millimeters, point => (point.Back.Millimeters, -point.Up.Millimeters))),
            new Label(new Point(0, TypeScale.Baseline(LabelPt)), "from above", LabelPt),
            new Label(new Point(_width + Gap, TypeScale.Baseline(LabelPt)), "from the right", LabelPt),
        ]);

    private IEnumerable<Primitive> Clock()
    {
        yield return new Circle(Above, _reach, Stroke.Thin);
        for (var hour = 1; hour <= 12; hour++)
        {
            var (sin, cos) = Math.SinCos(hour * Math.PI / 6);
            var inner = hour % 3 == 0 ? 0.82 : 0.91;
            yield return new Line(Above.Plus(inner * _reach * sin, -inner * _reach * cos), Above.Plus(_reach * sin, -_reach * cos), Stroke.Thin);
        }

        foreach (var hour in new[] { Hour("12", 0, -0.62), Hour("3", 0.66, 0), Hour("9", -0.66, 0) }.Where(IsClear))
        {
            yield return hour;
        }
    }

    private Label Hour(string hour, double right, double down) => new(Above.Plus(right * _reach, down * _reach), hour, LabelPt, TextAnchor.Middle, TextRise.Middle);

    // A light that stands at an hour takes its numeral's place.
    private bool IsClear(Label hour) =>
        _stands.All(stand => Above.Plus(stand.Right.Millimeters * _scale, -stand.Back.Millimeters * _scale).DistanceTo(hour.At) > 2.5 + HalfFront(stand));

    private IEnumerable<Primitive> CameraFromAbove() => Camera(Above.Plus(0, _reach), 0, -1);

    private IEnumerable<Primitive> CameraFromSide() => _pitches.Take(3).SelectMany(pitch =>
    {
        var (sin, cos) = Math.SinCos(pitch.Radians);
        var at = Side.Plus(-cos * _reach * 0.95, -sin * _reach * 0.95);
        return new Primitive[] { new Line(Side, at, Stroke.Centre with { WidthMm = 0.18 }) }.Concat(Camera(at, cos, sin));
    });

    // A wedge that points where the lens does.
    private static IEnumerable<Primitive> Camera(Point at, double dx, double dy)
    {
        const double length = 2.2;
        const double half = 1;
        yield return new Polygon([at, at.Plus((-length * dx) - (half * dy), (-length * dy) + (half * dx)), at.Plus((-length * dx) + (half * dy), (-length * dy) - (half * dx))], null, Fill.Black);
    }

    private static IEnumerable<Primitive> Subject(Point at)
    {
        yield return new Circle(at, 0.8, null, Fill.Grey);
    }

    private IEnumerable<Primitive> Level()
    {
        if (_onSheet)
        {
            yield return new Line(Side.Plus(-_reach, 0.9), Side.Plus(_reach, 0.9), Stroke.Edge);
        }
    }

    private IEnumerable<Primitive> Light(LightStandPlan stand, Point subject, double x, double y, Func<StandPoint, (double X, double Y)> seen)
    {
        var at = subject.Plus(x * _scale, y * _scale);
        var share = double.Hypot(x, y) / stand.Distance.Millimeters;
        foreach (var part in Holder(stand, subject, seen))
        {
            yield return part;
        }

        if (share < SeenHeadOn)
        {
            yield return new Circle(at, HalfFront(stand), Stroke.Edge);
        }
        else
        {
            var (dx, dy) = (x / double.Hypot(x, y), y / double.Hypot(x, y));
            yield return new Line(subject, at, Stroke.Thin);
            yield return Head(stand, at, dx, dy);
        }

        var name = Named(stand, subject, at);
        yield return Polygon.Rectangle(name.Bounds, null, Fill.White);
        yield return name;
    }

    // A bar at the front, and the head behind it.
    private Polygon Head(LightStandPlan stand, Point at, double dx, double dy)
    {
        var half = HalfFront(stand);
        var depth = Math.Clamp(stand.Depth.Millimeters * _scale, LeastDepth, 3);
        return new Polygon(
            [
                at.Plus(-half * dy, half * dx), at.Plus(half * dy, -half * dx),
                at.Plus((half * 0.5 * dy) + (depth * dx), (-half * 0.5 * dx) + (depth * dy)), at.Plus((-half * 0.5 * dy) + (depth * dx), (half * 0.5 * dx) + (depth * dy)),
            ],
            Stroke.Edge,
            Fill.White);
    }

    // What is longer than the drawing is cut off at its edge.
    private IEnumerable<Primitive> Holder(LightStandPlan stand, Point subject, Func<StandPoint, (double X, double Y)> seen)
    {
        if (stand.HeldBy is HolderKind.Hand or HolderKind.Ground)
        {
            yield break;
        }

        var places = stand.HolderLine.Select(seen).Select(place => subject.Plus(place.X * _scale, place.Y * _scale)).ToList();
        var room = new Bounds(subject.X - (_width / 2), 0, subject.X + (_width / 2), _height);
        foreach (var (from, to) in places.Zip(places.Skip(1)))
        {
            if (Cut(from, to, room) is var (start, end))
            {
                yield return new Line(start, end, Stroke.Hidden);
            }
        }
    }

    private static (Point Start, Point End)? Cut(Point from, Point to, Bounds room)
    {
        var (enter, leave) = (0.0, 1.0);
        foreach (var (start, step, least, most) in new[] { (from.X, to.X - from.X, room.Left, room.Right), (from.Y, to.Y - from.Y, room.Top, room.Bottom) })
        {
            if (Math.Abs(step) < 1e-9)
            {
                if (start < least || start > most)
                {
                    return null;
                }

                continue;
            }

            var (one, other) = ((least - start) / step, (most - start) / step);
            (enter, leave) = (Math.Max(enter, Math.Min(one, other)), Math.Min(leave, Math.Max(one, other)));
        }

        return enter < leave
            ? (new Point(from.X + (enter * (to.X - from.X)), from.Y + (enter * (to.Y - from.Y))), new Point(from.X + (leave * (to.X - from.X)), from.Y + (leave * (to.Y - from.Y))))
            : null;
    }

    // Beside a light that stands over or under the subject in its view, over one that stands beside it.
    private Label Named(LightStandPlan stand, Point subject, Point at)
    {
        var name = RoleText.Word(stand.Role);
        var half = Fonts.TextMeter.Width(name, LabelPt, Fonts.TextWeight.Bold) / 2;
        var (mark, isBeside) = (HalfFront(stand), Math.Abs(at.X - subject.X) > 1.2 * Math.Abs(at.Y - subject.Y));
        var x = isBeside ? at.X : at.X + ((at.X < subject.X - 0.5 ? -1 : 1) * (mark + 1 + half));
        var y = isBeside ? at.Y - mark - 1.8 : at.Y;
        return new Label(
            new Point(Math.Clamp(x, subject.X - (_width / 2) + half, subject.X + (_width / 2) - half), Math.Clamp(y, TypeScale.LineHeight(LabelPt) + 1, _height - 1)),
            name, LabelPt, TextAnchor.Middle, TextRise.Middle, Weight: Fonts.TextWeight.Bold);
    }

    private double HalfFront(LightStandPlan stand) => Math.Clamp(stand.Width.Millimeters * _scale, LeastFront, _reach) / 2;
}
