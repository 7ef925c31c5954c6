using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Building.Steps;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>A frame seen square on, to scale, with its measures.</summary>
internal sealed class ViewDrawing
{
    private const double FirstOffset = 8;
    private const double NextOffset = 6.5;
    private const double LongestOnPaper = 125;
    private const double NamePitch = 3.5;
    private const double CentreLineOver = 0.02;
    private const double HeightPt = 8;
    private const double LadderGap = 24;
    private const double PageWidth = 174;
    private static readonly Stroke Dashes = new(0.18, LineStyle.Dashed);

    // Half as wide as a strip that the panel rests on [m].
    private const double HalfRest = 0.005;
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100];

    private readonly FramePlan _frame;
    private readonly PanelPlan _panel;
    private readonly FrameView _view;
    private readonly double _reduction;
    private readonly Dictionary<string, FramePoint> _places;
    private readonly LabelPlacer _placer = new();
    private readonly FrameParts _parts;
    private readonly Camera _camera;

    private ViewDrawing(Plan plan, FramePlan frame, FrameView view)
    {
        (_frame, _panel, _view) = (frame, plan.Panel, view);
        _places = frame.Geometry.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        _reduction = Reductions.First(reduction => Size() / reduction <= LongestOnPaper - Room());
        _parts = new FrameParts(frame);
        _camera = new Camera(view, 1 / _reduction);
    }

    public static Drawing Plan(Plan plan, FramePlan frame)
    {
        var view = new ViewDrawing(plan, frame, FrameView.Plan);
        return view.Drawing([.. view.PanelFromAbove(), .. view.FlashFromAbove(), .. view.SubjectFromAbove()], view.PlanMeasures());
    }

    public static Drawing Front(Plan plan, FramePlan frame)
    {
        var view = new ViewDrawing(plan, frame, FrameView.Front);
        return view.Drawing([.. view.PanelEdge(plan.Panel.Width.Meters), .. view.FlashUpright()], view.FrontMeasures());
    }

    public static Drawing Side(Plan plan, FramePlan frame)
    {
        var view = new ViewDrawing(plan, frame, FrameView.Side);
        return view.Drawing([.. view.PanelEdge(plan.Panel.FlatDepth.Meters), .. view.SweptEdge(), .. view.FlashUpright()], view.SideMeasures());
    }

    private Drawing Drawing(IReadOnlyList<Primitive> over, IReadOnlyList<Primitive> measures)
    {
        var pipes = Pipes().ToList();
        _placer.Avoid([.. over, .. measures]);
        IReadOnlyList<Primitive> front = _view == FrameView.Front ? [] : [.. Front(pipes, over, measures)];

        return new Drawing(
            FormattableString.Invariant($"{_view.Name}, scale 1:{_reduction:0}"),
            $"{_view.Name} of the frame with its measures",
            [.. pipes, .. over, .. measures, .. Labels(), .. front]);
    }

    private double Size()
    {
        var places = _frame.Geometry.Joints.Select(joint => _view.Project(joint.Position)).Append(_view.Project(default)).ToList();
        var bounds = Bounds.Of(places);
        return Math.Max(bounds.Width, bounds.Height);
    }

    private Point At(FramePoint point)
    {
        var place = _view.Project(point);
        return new Point(place.X / _reduction, place.Y / _reduction);
    }

    private Point At(double right, double back, double up) => At(new FramePoint(right, back, up));

    // Whole micrometres, so that parts that lie equally near keep their order.
    private double Near(FramePoint point) => Math.Round(_view.Nearness(point), 3);

    private double Thick => _frame.PipeDiameter.Millimeters / _reduction;

    private double Outer => _parts.Outer * _camera.PerMetre;

    // Beside a view from the front stand its heights.
    private double Room() => _view == FrameView.Front
        ? Math.Max(0, _frame.Heights.Select(height => TextMeter.Width(FrameHeightText.Of(height), HeightPt, TextWeight.Regular)).DefaultIfEmpty().Max() + LadderGap - (PageWidth - LongestOnPaper))
        : 0;

    private IEnumerable<Primitive> Pipes()
    {
        List<Solid> bodies = [];
        List<Primitive> hidden = [];
        foreach (var joint in _frame.Geometry.Joints)
        {
            var body = _parts.Body(joint, default);
            bodies.Add(body.In(_camera, Ink.Fitting, way => joint.Ports.First(port => port.Direction.Dot(way) > 0.99).Member is null));
            foreach (var bar in body.Bars())
            {
                _placer.AvoidLine(_camera.At(bar.From), _camera.At(bar.To), Outer + 0.2);
            }
        }

        foreach (var member in _frame.Geometry.Members)
        {
            if (_parts.Piece(member, default, homeFrom: true, homeTo: true) is { } piece)
            {
                bodies.Add(piece.In(_camera, Ink.Pipe, openFrom: false, openTo: false));
            }

            if (IsHidden(member) && _parts.Piece(member, default, homeFrom: false, homeTo: false) is { } whole && At(whole.From).DistanceTo(At(whole.To)) > 1e-6)
            {
                var bar = BarCorners.Of(At(whole.From), At(whole.To), Thick / 2);
                hidden.Add(new Polygon([bar.FromLeft, bar.ToLeft, bar.ToRight, bar.FromRight], Dashes));
            }
        }

        foreach (var foot in _frame.Geometry.Feet)
        {
            var body = new PipeBody(foot.Position, _places[foot.Joint] - new FramePoint(0, 0, _parts.Outer - _parts.Radius), 0.004, 0.003, []);
            bodies.Add(body.In(_camera, Ink.Pipe, openFrom: false, openTo: false));
        }

        return FarFirst.Order(bodies, _camera).SelectMany(body => body.Marks).Concat(hidden);
    }

    // Less than this is seen of it between its fittings.
    private bool IsHidden(FrameMember member) => _parts.Piece(member, default, homeFrom: true, homeTo: true) is not { } piece || At(piece.From).DistanceTo(At(piece.To)) < 2;

    // Pieces that lie behind each other share a place and are named together, the nearest first; of legs seen from above all pieces are.
    private IEnumerable<Primitive> Labels()
    {
        var seen = _frame.Geometry.Members
            .Where(member => At(_places[member.From]).DistanceTo(At(_places[member.To])) > 1 || _view == FrameView.Plan)
            .GroupBy(Key)
            .Select(behind => behind.OrderByDescending(member => Near(_places[member.From])).ToList())
            .ToList();
        foreach (var member in seen.Select(behind => behind[0]).Where(member => At(_places[member.From]).DistanceTo(At(_places[member.To])) > 1))
        {
            _placer.AvoidLine(At(_places[member.From]), At(_places[member.To]), (Thick / 2) + 0.2);
        }

        return [.. seen.OrderByDescending(behind => behind[0].CentreLine).SelectMany(behind => _placer.Place(
            Middle(behind[0]),
            string.Join(", ", behind.Select(member => member.Label)),
            (IsHidden(behind[0]) ? Outer : Thick / 2) + 0.6,
            Math.Abs(At(_places[behind[0].From]).X - At(_places[behind[0].To]).X) > 0.1 ? -Math.PI / 2 : 0))];
    }

    private Point Middle(FrameMember member)
    {
        var (from, to) = (At(_places[member.From]), At(_places[member.To]));
        return new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
    }

    private (double, double, bool) Key(FrameMember member) =>
        (Math.Round(Middle(member).X, 1), Math.Round(Middle(member).Y, 1), At(_places[member.From]).DistanceTo(At(_places[member.To])) > 1);

    // Where the camera stands: below the plan, on the left of the view from the right.
    private IEnumerable<Primitive> Front(IReadOnlyList<Primitive> pipes, IReadOnlyList<Primitive> over, IReadOnlyList<Primitive> measures)
    {
        var all = new Drawing("", "", [.. pipes, .. over, .. measures]).Bounds;
        return _view == FrameView.Plan
            ? [.. StepDrawing.ArrowTo(new Point((all.Left + all.Right) / 2, all.Bottom + 10), 0, 1), new Label(new Point(((all.Left + all.Right) / 2) + 3, all.Bottom + 9), "front, towards the camera", 9, Weight: TextWeight.Bold)]
            : [.. StepDrawing.ArrowTo(new Point(all.Left, all.Bottom + 5), -1, 0), new Label(new Point(all.Left + 8, all.Bottom + 6), "front, towards the camera", 9, Weight: TextWeight.Bold)];
    }

    private IEnumerable<Primitive> PanelFromAbove()
    {
        var (right, half, back) = (_panel.Width.Meters / 2, _panel.FlatDepth.Meters / 2, BackOfSheet());
        yield return Polygon.Rectangle(Bounds.Of([At(-right, -half, 0), At(right, back, 0)]), Stroke.Heavy);
        if (back > half + 0.001)
        {
            yield return new Line(At(-right, half, 0), At(right, half, 0), Stroke.Hidden);
        }

        foreach (var rest in _frame.Geometry.Ledge.Rests)
        {
            var across = rest.Edge is Physics.Structure.Frames.PanelEdge.Left or Physics.Structure.Frames.PanelEdge.Right
                ? new FramePoint(HalfRest, 0, 0) : new FramePoint(0, HalfRest, 0);
            yield return Polygon.Rectangle(Bounds.Of([At(rest.From - across), At(rest.To + across)]), Stroke.Thin, Fill.Grey);
        }

        foreach (var clip in _frame.Geometry.Ledge.ClipPoints)
        {
            yield return new Circle(At(clip), 0.8, null, Fill.Black);
        }
    }

    private IEnumerable<Primitive> FlashFromAbove() => Windows().SelectMany(WindowFromAbove);

    // Names of flashes over each other stand under each other.
    private IEnumerable<Primitive> WindowFromAbove(FlashBelow flash, int index)
    {
        var (width, height) = (flash.HeadWidth.Meters / 2, flash.HeadHeight.Meters / 2);
        var (right, back) = (flash.Window.Right, flash.Window.Back);
        yield return Polygon.Rectangle(Bounds.Of([At(right - width, back - height, 0), At(right + width, back + height, 0)]), Stroke.Hidden, Fill.White);
        yield return new Line(At(right - width - CentreLineOver, back, 0), At(right + width + CentreLineOver, back, 0), Stroke.Centre);
        yield return new Line(At(right, back - height - CentreLineOver, 0), At(right, back + height + CentreLineOver, 0), Stroke.Centre);
        yield return new Label(At(right + width, back + height, 0).Plus(1, -1 - (index * NamePitch)), $"flash {Name(flash)}", 8);
    }

    // Flashes in one place are drawn once.
    private IEnumerable<FlashBelow> Windows() => _frame.LowerFlashes.DistinctBy(flash => flash.Window);

    private string Name(FlashBelow flash)
    {
        var here = _frame.LowerFlashes.Where(other => other.Window == flash.Window).ToList();
        return _frame.LowerFlashes.Count == 1 ? flash.Flash : string.Join("; ", here.Select(other => $"{other.Flash}, {string.Join(", ", other.SetUps)}"));
    }

    private IEnumerable<Primitive> SubjectFromAbove()
    {
        var foot = At(0, -(_panel.FlatDepth.Meters / 2) + _panel.SubjectFromFront.Meters, 0);
        yield return new Circle(foot, 1.6, Stroke.Thin);
        yield return new Label(foot.Plus(-2.5, 0), "subject", 8, TextAnchor.End, TextRise.Middle);
    }

    private List<Primitive> PlanMeasures()
    {
        var (right, half, back) = (_panel.Width.Meters / 2, _panel.FlatDepth.Meters / 2, BackOfSheet());
        List<Primitive> marks =
        [
            Across(-right, right, -half, FirstOffset, CutFormat.CutLength(_panel.Width)),
            Across(-_frame.Geometry.BaseWidth.Meters / 2, _frame.Geometry.BaseWidth.Meters / 2, -half, Offset(1), $"{CutFormat.CutLength(_frame.Geometry.BaseWidth)}, leg to leg"),
            new Dimension(At(-right, half, 0), At(-right, -half, 0), FirstOffset, CutFormat.CutLength(_panel.FlatDepth)),
            new Dimension(At(-right, BackFeet(), 0), At(-right, FrontFeet(), 0), Offset(1), $"{CutFormat.CutLength(_frame.Geometry.BaseDepth)}, leg to leg"),
        ];
        marks.AddRange(EachOnce(flash => flash.FromLeft).Select((flash, i) => new Dimension(
            At(-right, back, 0), new Point(At(flash.Window).X, At(-right, back, 0).Y), -Offset(i), CutFormat.CutLength(flash.FromLeft))));
        marks.AddRange(EachOnce(flash => flash.FromFront).Select((flash, i) => new Dimension(
            new Point(At(right, 0, 0).X, At(flash.Window).Y), At(right, -half, 0), -Offset(i), CutFormat.CutLength(flash.FromFront))));

        return marks;
    }

    private Dimension Across(double from, double to, double back, double offset, string text) =>
        new(At(from, back, 0), At(to, back, 0), offset, text);

    private IEnumerable<Primitive> PanelEdge(double length)
    {
        var up = _frame.Geometry.PanelHeight.Meters;
        var side = _view == FrameView.Side;
        var (from, to) = (-length / 2, length / 2);
        yield return Polygon.Rectangle(
            Bounds.Of([side ? At(0, from, up) : At(from, 0, up), side ? At(0, to, up + _panel.Thickness.Meters) : At(to, 0, up + _panel.Thickness.Meters)]),
            Stroke.Edge,
            Fill.Black);
    }

    private IEnumerable<Primitive> SweptEdge()
    {
        if (_frame.Sweep is { } sweep)
        {
            yield return new Polyline([.. sweep.Profile.Select(At)], Stroke.Heavy);
            var middle = At(sweep.Profile[sweep.Profile.Count / 2]);
            yield return new Label(middle.Plus(-3, -3), $"R {CutFormat.CutLength(sweep.Radius)}", 8, TextAnchor.End);
        }
    }

    private double BackOfSheet() => _frame.Sweep?.Profile[^1].Back ?? _panel.FlatDepth.Meters / 2;

    private IEnumerable<Primitive> FlashUpright() => Windows().SelectMany(WindowUpright);

    private IEnumerable<Primitive> WindowUpright(FlashBelow flash)
    {
        var half = (_view == FrameView.Side ? flash.HeadHeight : flash.HeadWidth).Millimeters / 2 / _reduction;
        var top = At(flash.Window);
        yield return Polygon.Rectangle(new Bounds(top.X - half, top.Y, top.X + half, top.Y + Math.Min(50 / _reduction, -top.Y)), Stroke.Edge, Fill.LightGrey);
        yield return new Line(top.Plus(-half, 0), top.Plus(half, 0), Stroke.Heavy);
    }

    private List<Primitive> FrontMeasures()
    {
        var half = _frame.Geometry.BaseWidth.Meters / 2;
        var up = _frame.Geometry.PanelHeight.Meters;
        List<Primitive> marks =
        [
            new Dimension(At(-half, 0, 0), At(half, 0, 0), FirstOffset, $"{CutFormat.CutLength(_frame.Geometry.BaseWidth)}, leg to leg"),
            Ground(-half, half),
            .. Ladder(At(-Math.Max(half, _panel.Width.Meters / 2), 0, 0).X),
        ];
        marks.AddRange(EachOnce(flash => flash.BelowPanel).Select((flash, i) => new Dimension(
            new Point(At(half, 0, 0).X, At(flash.Window).Y), new Point(At(half, 0, 0).X, At(0, 0, up).Y), Offset(i), $"{CutFormat.CutLength(flash.BelowPanel)}, window to panel")));

        return marks;
    }

    // Heights beside the view, each at its own where there is room, else pushed up past the one below, with a line to where it belongs.
    private IEnumerable<Primitive> Ladder(double edge)
    {
        var free = double.PositiveInfinity;
        foreach (var height in _frame.Heights)
        {
            var at = At(0, 0, height.Height.Meters).Y;
            var y = Math.Min(at, free - NamePitch);
            free = y;
            yield return new Line(new Point(edge - 1, at), new Point(edge - 4, at), Stroke.Thin);
            yield return new Line(new Point(edge - 4, at), new Point(edge - 8, y), Stroke.Thin);
            yield return new Label(new Point(edge - 9, y), FrameHeightText.Of(height), HeightPt, TextAnchor.End, TextRise.Middle);
        }
    }

    private List<Primitive> SideMeasures()
    {
        var (front, back) = (FrontFeet(), BackFeet());
        var fromFront = EachOnce(flash => flash.FromFront).ToList();
        var up = _frame.Geometry.PanelHeight.Meters;
        List<Primitive> marks =
        [
            new Dimension(At(0, front, 0), At(0, back, 0), Offset(fromFront.Count), $"{CutFormat.CutLength(_frame.Geometry.BaseDepth)}, leg to leg"),
            new Dimension(At(0, front, up), At(0, front, 0), FirstOffset, CutFormat.CutLength(_frame.Geometry.PanelHeight)),
            Ground(front, back),
        ];
        if (_frame.Sweep is { } sweep)
        {
            marks.Add(new Dimension(At(0, back, 0), At(0, back, sweep.TopRail.Meters), FirstOffset, $"{CutFormat.CutLength(sweep.TopRail)}, rail of the sweep"));
        }

        var edge = -_panel.FlatDepth.Meters / 2;
        marks.AddRange(fromFront.Select((flash, i) => new Dimension(
            new Point(At(0, edge, 0).X, At(0, front, 0).Y), new Point(At(flash.Window).X, At(0, front, 0).Y), Offset(i), CutFormat.CutLength(flash.FromFront))));

        return marks;
    }

    // The shortest first, so that no measure's ends cross another measure; what reads alike once.
    private IEnumerable<FlashBelow> EachOnce(Func<FlashBelow, Length> measure) =>
        Windows().DistinctBy(flash => CutFormat.CutLength(measure(flash))).OrderBy(measure);

    private static double Offset(int place) => FirstOffset + (place * NextOffset);

    private Line Ground(double from, double to) => _view == FrameView.Side
        ? new Line(At(0, from, 0).Plus(-4, 0), At(0, to, 0).Plus(4, 0), Stroke.Thin)
        : new Line(At(from, 0, 0).Plus(-4, 0), At(to, 0, 0).Plus(4, 0), Stroke.Thin);

    private double FrontFeet() => Standing().Min();

    private double BackFeet() => Standing().Max();

    private IEnumerable<double> Standing() => _frame.Geometry.Feet.Count > 0
        ? _frame.Geometry.Feet.Select(foot => foot.Position.Back)
        : _frame.Geometry.Joints.Select(joint => joint.Position.Back);
}
