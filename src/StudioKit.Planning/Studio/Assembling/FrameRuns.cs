using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>The straight lines of pieces and fittings that a frame is made of.</summary>
internal sealed class FrameRuns
{
    private readonly FrameResult _frame;
    private readonly Dictionary<string, FramePoint> _places;

    public FrameRuns(FrameResult frame)
    {
        _frame = frame;
        _places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
    }

    public FramePoint At(string joint) => _places[joint];

    /// <summary>Every line that runs in a direction, each in that order.</summary>
    public IReadOnlyList<PartRun> Along(SocketDirection towards)
    {
        var way = SocketDirections.Vector(towards);
        var pieces = _frame.Members
            .Select(member => (_places[member.To] - _places[member.From]).Dot(way) < 0 ? (member.Label, From: member.To, To: member.From) : (member.Label, From: member.From, To: member.To))
            .Where(piece => SocketDirections.Of(_places[piece.To] - _places[piece.From]) == towards)
            .ToDictionary(piece => piece.From, StringComparer.Ordinal);
        var ends = pieces.Values.Select(piece => piece.To).ToHashSet(StringComparer.Ordinal);
        return [.. pieces.Keys.Where(start => !ends.Contains(start)).Select(start => Follow(start, towards, pieces))];
    }

    private static PartRun Follow(string start, SocketDirection towards, Dictionary<string, (string Label, string From, string To)> pieces)
    {
        List<string> parts = [start];
        for (var at = start; pieces.TryGetValue(at, out var piece); at = piece.To)
        {
            parts.AddRange([piece.Label, piece.To]);
        }

        return new PartRun(towards, [.. parts]);
    }
}
