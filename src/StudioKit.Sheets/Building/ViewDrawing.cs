using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>A frame seen square on, to scale, with its measures.</summary>
internal sealed class ViewDrawing
{
    private const double FirstOffset = 9;
    private const double NextOffset = 8;
    private const double LongestOnPaper = 125;
    private const double NamePitch = 3.5;
    private const double CentreLineOver = 0.02;

    // Half as wide as a strip that the panel rests on [m].
    private const double HalfRest = 0.005;
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100];

    private readonly FramePlan _frame;
    private readonly PanelPlan _panel;
    private readonly Measures _measures;
    private readonly FrameView _view;
    private readonly double _reduction;
    private readonly Dictionary<string, FramePoint> _places;
    private readonly LabelPlacer _placer = new();

    private ViewDrawing(Plan plan, FramePlan frame, Measures measures, FrameView view)
    {
        (_frame, _panel, _measures, _view) = (frame, plan.Panel, measures, view);
        _places = frame.Geometry.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        _reduction = Reductions.First(reduction => Size() / reduction <= LongestOnPaper);
    }

    public static Drawing Plan(Plan plan, FramePlan frame, Measures measures)
    {
        var view = new ViewDrawing(plan, frame, measures, FrameView.Plan);
        return view.Drawing([.. view.PanelFromAbove(), .. view.FlashFromAbove(), .. view.SubjectFromAbove()], view.PlanMeasures());
    }

    public static Drawing Front(Plan plan, FramePlan frame, Measures measures)
    {
        var view = new ViewDrawing(plan, frame, measures, FrameView.Front);
        return view.Drawing([.. view.PanelEdge(plan.Panel.Width.Meters), .. view.FlashUpright()], view.FrontMeasures());
    }

    public static Drawing Side(Plan plan, FramePlan frame, Measures measures)
    {
        var view = new ViewDrawing(plan, frame, measures, FrameView.Side);
        return view.Drawing([.. view.PanelEdge(plan.Panel.FlatDepth.Meters), .. view.SweptEdge(), .. view.FlashUpright()], view.SideMeasures());
    }

    private Drawing Drawing(IReadOnlyList<Primitive> over, IReadOnlyList<Primitive> measures)
    {
        var pipes = Pipes().ToList();
        _placer.Avoid([.. over, .. measures]);

        return new Drawing(
            FormattableString.Invariant($"{_view.Name}, scale 1:{_reduction:0}"),
            $"{_view.Name} of the frame with its measures",
            [.. pipes, .. over, .. measures, .. Labels()]);
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

    // Far ones first, each filled white, so that the near ones hide them.
    private IEnumerable<Primitive> Pipes()
    {
        var members = _frame.Geometry.Members.Select(member => (
            Near: (Near(_places[member.From]) + Near(_places[member.To])) / 2,
            Mark: Pipe(At(_places[member.From]), At(_places[member.To]))));
        var joints = _frame.Geometry.Joints.Select(joint => (
            Near: Near(joint.Position) + 1,
            Mark: (Primitive)new Circle(At(joint.Position), Thick * 0.72, Stroke.Edge, Fill.LightGrey)));
        var feet = _frame.Geometry.Feet.Select(foot => (
            Near: Near(foot.Position) - 1,
            Mark: Pipe(At(foot.Position), At(_places[foot.Joint]), Thick / 3)));
        return members.Concat(joints).Concat(feet).OrderBy(part => part.Near).Select(part => part.Mark);
    }

    private Primitive Pipe(Point from, Point to, double? thick = null)
    {
        var half = (thick ?? Thick) / 2;
        if (from.DistanceTo(to) < 1e-6)
        {
            return new Circle(from, half, Stroke.Edge, Fill.White);
        }

        var bar = BarCorners.Of(from, to, half);
        return new Polygon([bar.FromLeft, bar.ToLeft, bar.ToRight, bar.FromRight], Stroke.Edge, Fill.White);
    }

    // Of pieces that lie behind each other, the nearest is named.
    private IEnumerable<Primitive> Labels()
    {
        foreach (var joint in _frame.Geometry.Joints)
        {
            _placer.Avoid(new Bounds(At(joint.Position).X, At(joint.Position).Y, At(joint.Position).X, At(joint.Position).Y).Grown(Thick * 0.72));
        }

        var seen = _frame.Geometry.Members
            .Where(member => At(_places[member.From]).DistanceTo(At(_places[member.To])) > 1)
            .GroupBy(member => Key(member))
            .Select(behind => behind.MaxBy(member => Near(_places[member.From]))!)
            .ToList();
        foreach (var member in seen)
        {
            _placer.AvoidLine(At(_places[member.From]), At(_places[member.To]), (Thick / 2) + 0.2);
        }

        return [.. seen.SelectMany(member => _placer.Place(
            Middle(member), member.Label, (Thick / 2) + 0.6, Math.Abs(At(_places[member.From]).X - At(_places[member.To]).X) > 0.1 ? -Math.PI / 2 : 0))];
    }

    private Point Middle(FrameMember member)
    {
        var (from, to) = (At(_places[member.From]), At(_places[member.To]));
        return new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
    }

    private (double, double) Key(FrameMember member) => (Math.Round(Middle(member).X, 1), Math.Round(Middle(member).Y, 1));

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
            Across(-right, right, -half, FirstOffset, _measures.Of(_panel.Width)),
            Across(-_frame.Geometry.BaseWidth.Meters / 2, _frame.Geometry.BaseWidth.Meters / 2, -half, Offset(1), $"{_measures.Of(_frame.Geometry.BaseWidth)}, leg to leg"),
            new Dimension(At(-right, half, 0), At(-right, -half, 0), FirstOffset, _measures.Of(_panel.FlatDepth)),
            new Dimension(At(-right, BackFeet(), 0), At(-right, FrontFeet(), 0), Offset(1), $"{_measures.Of(_frame.Geometry.BaseDepth)}, leg to leg"),
        ];
        marks.AddRange(EachOnce(flash => flash.FromLeft).Select((flash, i) => new Dimension(
            At(-right, back, 0), new Point(At(flash.Window).X, At(-right, back, 0).Y), -Offset(i), _measures.Of(flash.FromLeft))));
        marks.AddRange(EachOnce(flash => flash.FromFront).Select((flash, i) => new Dimension(
            new Point(At(right, 0, 0).X, At(flash.Window).Y), At(right, -half, 0), -Offset(i), _measures.Of(flash.FromFront))));

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
            yield return new Label(middle.Plus(-3, -3), $"R {_measures.Of(sweep.Radius)}", 8, TextAnchor.End);
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
            new Dimension(At(-half, 0, 0), At(half, 0, 0), FirstOffset, $"{_measures.Of(_frame.Geometry.BaseWidth)}, leg to leg"),
            new Dimension(At(-half, 0, up), At(-half, 0, 0), Offset(Math.Max(1, _frame.RailHeights.Count)), _measures.Of(_frame.Geometry.PanelHeight)),
            Ground(-half, half),
        ];
        marks.AddRange(_frame.RailHeights.Select((height, i) => new Dimension(
            At(-half, 0, height.Meters), At(-half, 0, 0), Offset(i), _measures.Of(height))));
        marks.AddRange(EachOnce(flash => flash.BelowPanel).Select((flash, i) => new Dimension(
            new Point(At(half, 0, 0).X, At(flash.Window).Y), new Point(At(half, 0, 0).X, At(0, 0, up).Y), Offset(i), $"{_measures.Of(flash.BelowPanel)}, window to panel")));

        return marks;
    }

    private List<Primitive> SideMeasures()
    {
        var (front, back) = (FrontFeet(), BackFeet());
        var fromFront = EachOnce(flash => flash.FromFront).ToList();
        var up = _frame.Geometry.PanelHeight.Meters;
        List<Primitive> marks =
        [
            new Dimension(At(0, front, 0), At(0, back, 0), Offset(fromFront.Count), $"{_measures.Of(_frame.Geometry.BaseDepth)}, leg to leg"),
            new Dimension(At(0, front, up), At(0, front, 0), FirstOffset, _measures.Of(_frame.Geometry.PanelHeight)),
            Ground(front, back),
        ];
        if (_frame.Sweep is { } sweep)
        {
            marks.Add(new Dimension(At(0, back, 0), At(0, back, sweep.TopRail.Meters), FirstOffset, $"{_measures.Of(sweep.TopRail)}, rail of the sweep"));
        }

        var edge = -_panel.FlatDepth.Meters / 2;
        marks.AddRange(fromFront.Select((flash, i) => new Dimension(
            new Point(At(0, edge, 0).X, At(0, front, 0).Y), new Point(At(flash.Window).X, At(0, front, 0).Y), Offset(i), _measures.Of(flash.FromFront))));

        return marks;
    }

    // The shortest first, so that no measure's ends cross another measure; what reads alike once.
    private IEnumerable<FlashBelow> EachOnce(Func<FlashBelow, Length> measure) =>
        Windows().DistinctBy(flash => _measures.Of(measure(flash))).OrderBy(measure);

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
