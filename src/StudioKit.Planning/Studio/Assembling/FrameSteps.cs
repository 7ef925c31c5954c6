using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>The order in which pipes and fittings go together: legs, sides, rails across, the other side; read off the frame's lines.</summary>
/// <param name="frame">The frame.</param>
/// <param name="toEdge">Middle of a kind of fitting to its edge.</param>
internal sealed class FrameSteps(FrameResult frame, Func<FittingKind, Length> toEdge)
{
    // A piece of which less than this is seen between its fittings is told of by letter and count.
    private const double Vanishes = 0.02;

    // Half a millimetre, as pieces are cut, apart: one height.
    private const int HeightDecimals = 4;

    private readonly FrameRuns _runs = new(frame);
    private readonly HashSet<string> _there = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FrameJoint> _joints = frame.Joints.ToDictionary(joint => joint.Label, StringComparer.Ordinal);
    private readonly Dictionary<string, FrameMember> _members = frame.Members.ToDictionary(member => member.Label, StringComparer.Ordinal);

    /// <summary>The steps, after the caps have their feet.</summary>
    /// <param name="caps">Caps that are at hand already.</param>
    public IEnumerable<AssemblyStep> Of(IEnumerable<string> caps)
    {
        _there.UnionWith(caps);
        var (legs, along, across) = (_runs.Along(SocketDirection.Down), _runs.Along(SocketDirection.Back), _runs.Along(SocketDirection.Right));
        foreach (var side in Enum.GetValues<FrameSide>())
        {
            var (own, rails) = (legs.Where(run => IsOn(run, side)).OrderBy(run => _runs.At(run.Parts[0]).Back).ToList(), along.Where(run => IsOn(run, side)).ToList());
            if (own.Count > 0)
            {
                yield return Put(new AssemblyStep.BuildLegs(side, [.. own.Select(run => Length.FromMeters(_runs.At(run.Parts[0]).Back))]), own, Parts(own));
            }

            if (rails.Count > 0)
            {
                yield return Put(new AssemblyStep.JoinSide(side, Heights(rails)), rails, Parts([.. rails, .. own]));
            }
        }

        if (across.Count > 0)
        {
            var right = frame.Joints.Where(joint => joint.Position.Right > 0 && _there.Contains(joint.Label)).Select(joint => joint.Label).ToHashSet(StringComparer.Ordinal);
            var pieces = frame.Members.Where(member => _there.Contains(member.Label) && right.Contains(member.From)).Select(member => member.Label).ToList();
            yield return Put(new AssemblyStep.PushAcross(Heights(across)), across, [.. across.SelectMany(run => run.Parts).Where(part => !right.Contains(part))]);
            yield return Put(new AssemblyStep.CloseFrame(Heights(across)), across, [.. across.SelectMany(run => run.Parts), .. right, .. pieces]);
        }
    }

    // Parts that are not there yet come in, those that are are taken up again.
    private AssemblyStep Put(AssemblyStep step, IReadOnlyList<PartRun> runs, IReadOnlyList<string> atHand)
    {
        var parts = atHand.Distinct(StringComparer.Ordinal).ToList();
        var added = parts.Where(part => !_there.Contains(part)).ToList();
        _there.UnionWith(added);
        return step with
        {
            Joints = [.. added.Where(_joints.ContainsKey)],
            Members = [.. added.Where(_members.ContainsKey)],
            Moved = [.. parts.Except(added, StringComparer.Ordinal)],
            Runs = [.. runs],
            FreeSockets = [.. parts.Where(_joints.ContainsKey).SelectMany(part => Free(_joints[part]))],
            ShortPieces = [.. Short([.. added.Where(_members.ContainsKey).Select(part => _members[part])])],
            WrongWays = [.. Turned(added)],
        };
    }

    private IEnumerable<FreeSocket> Free(FrameJoint joint) => joint.Ports
        .Where(port => port.Member is not { } member || !_there.Contains(member))
        .Select(port => new FreeSocket(joint.Label, SocketDirections.Of(port.Direction), port.Member));

    private IEnumerable<ShortPieces> Short(List<FrameMember> pieces) => pieces
        .Select(piece => (piece, Shows: Shows(piece)))
        .Where(pair => pair.Shows < Vanishes)
        .GroupBy(pair => pair.piece.Group, StringComparer.Ordinal)
        .Select(group => new ShortPieces(group.Key, group.First().piece.CutLength, group.Count(), Length.FromMeters(Math.Max(0, group.Min(pair => pair.Shows)))));

    private double Shows(FrameMember piece) => (piece.CentreLine - Edge(piece.From) - Edge(piece.To)).Meters;

    private Length Edge(string joint) => toEdge(_joints[joint].Kind);

    // A fitting whose pipes so far lie in one line can be turned about it. Most likely is the one with a socket towards the other side; turned right round it points out.
    private IEnumerable<WrongWay> Turned(List<string> added)
    {
        var turning = added.Where(_joints.ContainsKey).Select(part => _joints[part])
            .Select(joint => (Joint: joint, Axis: AxisHeld(joint)))
            .Where(pair => pair.Axis is not null && pair.Joint.Ports.Any(port => Math.Abs(port.Direction.Dot(pair.Axis!.Value)) < 0.5))
            .ToList();
        return turning
            .OrderByDescending(pair => pair.Joint.Ports.Count(port => !IsThere(port)))
            .Take(1)
            .Concat(turning.Where(pair => pair.Joint.Kind == FittingKind.Tee).OrderByDescending(pair => pair.Joint.Ports.Any(port => !IsThere(port) && Math.Abs(port.Direction.Right) > 0.5)).Take(1))
            .DistinctBy(pair => pair.Joint.Label)
            .Select(pair => new WrongWay(WrongWayKind.Turned, pair.Joint.Label, [.. pair.Joint.Ports.Select(port => SocketDirections.Of(Turn(port.Direction, pair.Axis!.Value)))]));
    }

    private FramePoint? AxisHeld(FrameJoint joint)
    {
        var held = joint.Ports.Where(IsThere).Select(port => port.Direction).ToList();
        return held.Count > 0 && held.TrueForAll(way => Math.Abs(Math.Abs(way.Dot(held[0])) - 1) < 1e-6) && held.Count < joint.Ports.Count ? held[0] : null;
    }

    private bool IsThere(FramePort port) => port.Member is { } member && _there.Contains(member);

    // Half a turn about an upright pipe; about a level one a quarter, as a socket that hangs down is seen at once.
    private static FramePoint Turn(FramePoint way, FramePoint axis)
    {
        var along = way.Dot(axis) * axis;
        var rest = way - along;
        return Math.Abs(axis.Up) > 0.5 ? along - rest : along + new FramePoint((axis.Back * rest.Up) - (axis.Up * rest.Back), (axis.Up * rest.Right) - (axis.Right * rest.Up), (axis.Right * rest.Back) - (axis.Back * rest.Right));
    }

    private static IReadOnlyList<string> Parts(IReadOnlyList<PartRun> runs) => [.. runs.SelectMany(run => run.Parts)];

    private ValueList<RailHeight> Heights(IReadOnlyList<PartRun> runs) =>
    [
        .. runs.GroupBy(run => Math.Round(_runs.At(run.Parts[0]).Up, HeightDecimals))
            .OrderBy(group => group.Key)
            .Select(group => new RailHeight(Length.FromMeters(group.Key), [.. group.SelectMany(run => run.Parts).Where(_members.ContainsKey)])),
    ];

    private bool IsOn(PartRun run, FrameSide side) => _runs.At(run.Parts[0]).Right < 0 == (side == FrameSide.Left);
}
