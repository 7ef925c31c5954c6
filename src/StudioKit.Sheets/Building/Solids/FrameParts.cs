using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>The pipes and fittings of a frame as bodies, each where it stands or pulled away from there.</summary>
internal sealed class FrameParts
{
    /// <summary>A socket's wall is drawn as this share of the pipe's diameter; a kit gives no wall for its fittings.</summary>
    public const double WallShare = 0.14;

    private const double BoreShare = 0.8;
    private readonly Dictionary<string, FrameJoint> _joints;
    private readonly Dictionary<string, FrameMember> _members;
    private readonly Dictionary<FittingKind, double> _reach;

    public FrameParts(FramePlan frame)
    {
        Frame = frame;
        _joints = frame.Geometry.Joints.ToDictionary(joint => joint.Label, StringComparer.Ordinal);
        _members = frame.Geometry.Members.ToDictionary(member => member.Label, StringComparer.Ordinal);
        _reach = frame.Fittings.ToDictionary(fitting => fitting.Kind, fitting => fitting.ToMark.Meters);
        Radius = frame.PipeDiameter.Meters / 2;
    }

    public FramePlan Frame { get; }

    /// <summary>Outer radius of the pipe [m].</summary>
    public double Radius { get; }

    /// <summary>Outer radius of a socket [m].</summary>
    public double Outer => Radius + (WallShare * 2 * Radius);

    public FrameJoint Joint(string label) => _joints[label];

    public FrameMember Member(string label) => _members[label];

    public bool IsJoint(string label) => _joints.ContainsKey(label);

    public FittingBody Body(FrameJoint joint, FramePoint shift) => Body(joint.Kind, joint.Position + shift, [.. joint.Ports.Select(port => port.Direction)]);

    public FittingBody Body(FittingKind kind, FramePoint middle, IReadOnlyList<FramePoint> ways) => new(kind, middle, ways, _reach[kind], Outer, Radius);

    /// <summary>Middle of the fitting to the end of a pipe that is pushed home [m].</summary>
    public double ToPipeEnd(FittingKind kind) => _reach[kind] - Frame.InsertionDepths[kind].Meters;

    /// <summary>A piece from end to end, or where it is pushed home from edge to edge; none where its fittings touch over it.</summary>
    /// <param name="member">The piece.</param>
    /// <param name="shift">How far it is pulled away [m].</param>
    /// <param name="homeFrom">Whether its first end is in its fitting.</param>
    /// <param name="homeTo">Whether its second end is.</param>
    public PipeBody? Piece(FrameMember member, FramePoint shift, bool homeFrom, bool homeTo)
    {
        var (from, to) = (_joints[member.From], _joints[member.To]);
        var line = to.Position - from.Position;
        var way = (1 / line.Norm) * line;
        var first = homeFrom ? _reach[from.Kind] : ToPipeEnd(from.Kind);
        var last = homeTo ? _reach[to.Kind] : ToPipeEnd(to.Kind);
        if (line.Norm - first - last < 1e-4)
        {
            return null;
        }

        List<FramePoint> marks = [];
        if (!homeFrom)
        {
            marks.Add(from.Position + shift + (_reach[from.Kind] * way));
        }

        if (!homeTo)
        {
            marks.Add(to.Position + shift - (_reach[to.Kind] * way));
        }

        return new PipeBody(from.Position + shift + (first * way), to.Position + shift - (last * way), Radius, BoreShare * Radius, marks);
    }
}
