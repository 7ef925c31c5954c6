using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Building.Steps;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building;

/// <summary>The frame pulled apart at every joint, with every piece and fitting labelled.</summary>
internal static class ExplodedDrawing
{
    private const double WidthOnPaper = 132;
    private const double HeightOnPaper = 132;

    // Joints are drawn apart by this share of the frame's reach, whatever lies between them; further from front to back, as the
    // legs of a square frame would otherwise stand behind each other.
    private const double Pull = 0.14;
    private const double PullBack = 0.3;

    public static Drawing Of(FramePlan frame)
    {
        var parts = new FrameParts(frame);
        var shifts = Apart(frame.Geometry);
        var flat = frame.Geometry.Joints.Select(joint => FrameView.Isometric.Project(joint.Position + shifts[joint.Label]));
        var bounds = Bounds.Of(flat);
        var camera = new Camera(FrameView.Isometric, Math.Min(WidthOnPaper / bounds.Width, HeightOnPaper / bounds.Height));
        var marks = Marks(parts, shifts, camera).ToList();
        var left = new Drawing("", "", marks).Bounds;
        return new Drawing(
            "Exploded view, not to scale",
            "Every pipe and fitting of the frame, pulled apart, with its label",
            [.. marks, .. FrontArrow.At(new Point(left.Left, left.Bottom - 8), camera)]);
    }

    // Along each axis, every distance between neighbouring joints grows by the same pull, so that each pipe comes clear of its fittings.
    private static Dictionary<string, FramePoint> Apart(FrameResult frame)
    {
        var (right, back, up) = (Stretch(frame, Pull, point => point.Right), Stretch(frame, PullBack, point => point.Back), Stretch(frame, Pull, point => point.Up));
        return frame.Joints.ToDictionary(
            joint => joint.Label,
            joint => new FramePoint(right(joint.Position.Right), back(joint.Position.Back), up(joint.Position.Up)),
            StringComparer.Ordinal);
    }

    private static Func<double, double> Stretch(FrameResult frame, double share, Func<FramePoint, double> axis)
    {
        var stops = frame.Joints.Select(joint => Math.Round(axis(joint.Position), 5)).Distinct().Order().ToList();
        var pull = share * frame.Joints.Max(joint => Math.Max(Math.Abs(joint.Position.Right), Math.Max(Math.Abs(joint.Position.Back), joint.Position.Up)));
        return value => pull * stops.IndexOf(Math.Round(value, 5));
    }

    private static IEnumerable<Primitive> Marks(FrameParts parts, Dictionary<string, FramePoint> shifts, Camera camera)
    {
        var placer = new LabelPlacer();
        List<Solid> bodies = [];
        foreach (var joint in parts.Frame.Geometry.Joints)
        {
            var body = parts.Body(joint, shifts[joint.Label]);
            bodies.Add(body.In(camera, joint.Pinned ? Ink.Pinned : Ink.Fitting, _ => true));
            foreach (var bar in body.Bars())
            {
                placer.AvoidLine(camera.At(bar.From), camera.At(bar.To), (bar.Radius * camera.PerMetre) + 0.2);
            }
        }

        foreach (var member in parts.Frame.Geometry.Members)
        {
            yield return new Line(camera.At(parts.Joint(member.From).Position + shifts[member.From]), camera.At(parts.Joint(member.To).Position + shifts[member.To]), Stroke.Centre);
            if (parts.Piece(member, Between(member, shifts), homeFrom: false, homeTo: false) is { } piece)
            {
                bodies.Add(piece.In(camera, Ink.Pipe, openFrom: true, openTo: true));
                placer.AvoidLine(camera.At(piece.From), camera.At(piece.To), (parts.Radius * camera.PerMetre) + 0.2);
            }
        }

        foreach (var mark in FarFirst.Order(bodies, camera).SelectMany(body => body.Marks))
        {
            yield return mark;
        }

        foreach (var label in parts.Frame.Geometry.Members.SelectMany(member => placer.Place(camera.At(Middle(parts, member) + Between(member, shifts)), member.Label, (parts.Radius * camera.PerMetre) + 0.6, -Math.PI / 2))
            .Concat(parts.Frame.Geometry.Joints.SelectMany(joint => placer.Place(camera.At(joint.Position + shifts[joint.Label]), joint.Label, (parts.Outer * camera.PerMetre) + 0.6, Math.PI / 4, TextWeight.Regular, 7))))
        {
            yield return label;
        }
    }

    private static FramePoint Middle(FrameParts parts, FrameMember member) => 0.5 * (parts.Joint(member.From).Position + parts.Joint(member.To).Position);

    private static FramePoint Between(FrameMember member, Dictionary<string, FramePoint> shifts) => 0.5 * (shifts[member.From] + shifts[member.To]);
}
