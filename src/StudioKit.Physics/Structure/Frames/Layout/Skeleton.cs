namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Centre lines of a frame while it is laid out: joints by number, lines between them.</summary>
internal sealed class Skeleton
{
    private readonly List<FramePoint> _joints = [];
    private readonly List<SkeletonLine> _lines = [];
    private readonly Dictionary<int, FramePoint> _openPorts = [];

    public IReadOnlyList<FramePoint> Joints => _joints;

    public IReadOnlyList<SkeletonLine> Lines => _lines;

    /// <summary>A joint of its own, in whole picometres, so that one place is one number whichever sum it comes from.</summary>
    public int Add(FramePoint position) => Put(new FramePoint(Snapped(position.Right), Snapped(position.Back), Snapped(position.Up)));

    /// <summary>Joins joints in a row, one pipe between each pair.</summary>
    public void Join(FrameMemberRole role, params ReadOnlySpan<int> joints)
    {
        for (var i = 1; i < joints.Length; i++)
        {
            _lines.Add(new SkeletonLine(role, joints[i - 1], joints[i], 1, 1));
        }
    }

    public void OpenPort(int joint, FramePoint direction) => _openPorts[joint] = direction;

    public FramePoint? OpenPortOf(int joint) => _openPorts.TryGetValue(joint, out var direction) ? direction : null;

    /// <summary>Puts joints into a line, evened out by the caller.</summary>
    public void Split(int line, IReadOnlyList<double> distancesFromStart)
    {
        var (role, from, to, _, _) = _lines[line];
        var direction = Direction(from, to);
        var parts = distancesFromStart.Count + 1;
        var stops = new List<int> { from };
        stops.AddRange(distancesFromStart.Select(distance => Put(_joints[from] + (distance * direction))));
        stops.Add(to);
        _lines.RemoveAt(line);
        _lines.InsertRange(line, Enumerable.Range(0, parts).Select(i => new SkeletonLine(role, stops[i], stops[i + 1], i + 1, parts)));
    }

    public double LengthOf(SkeletonLine line) => (_joints[line.To] - _joints[line.From]).Norm;

    public FramePoint Direction(int from, int to)
    {
        var way = _joints[to] - _joints[from];
        return (1 / way.Norm) * way;
    }

    /// <summary>Every socket of a joint: where it points and the line in it, −1 for an open one.</summary>
    public IReadOnlyList<(FramePoint Direction, int Line)> PortsOf(int joint)
    {
        var ports = new List<(FramePoint Direction, int Line)>();
        for (var i = 0; i < _lines.Count; i++)
        {
            if (_lines[i].From == joint || _lines[i].To == joint)
            {
                ports.Add((Direction(joint, _lines[i].From == joint ? _lines[i].To : _lines[i].From), i));
            }
        }

        if (OpenPortOf(joint) is { } open)
        {
            ports.Add((open, -1));
        }

        return ports;
    }

    public FittingKind KindOf(int joint) => FittingAt(joint)
        ?? throw new InvalidOperationException("Pipes meet at an angle, or in a number, that no fitting has.");

    /// <summary>Whether there is a fitting for every joint.</summary>
    public bool CanBeJoined => Enumerable.Range(0, _joints.Count).All(joint => PortsOf(joint).Count == 0 || FittingAt(joint) is not null);

    private FittingKind? FittingAt(int joint) => FittingGeometry.KindFor([.. PortsOf(joint).Select(port => port.Direction)]);

    private int Put(FramePoint position)
    {
        _joints.Add(position);
        return _joints.Count - 1;
    }

    private static double Snapped(double metres) => Math.Round(metres, 12);
}
