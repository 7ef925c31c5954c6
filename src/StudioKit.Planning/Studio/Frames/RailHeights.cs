using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Heights of a frame's lower rails that a builder measures off on its legs.</summary>
internal static class RailHeights
{
    // Rails nearer than a hundredth of a millimetre lie at one height.
    private const int Decimals = 5;

    /// <summary>The lowest rail, and where flashes hang at several heights the rails of each, from the ground up.</summary>
    public static IReadOnlyList<Length> Of(FrameResult frame)
    {
        var cradles = Levels(frame, role => role == FrameMemberRole.CradleRail);
        var lowest = Levels(frame, role => role is FrameMemberRole.Stretcher or FrameMemberRole.CradleRail).Take(1);
        return [.. (cradles.Count > 1 ? lowest.Concat(cradles).Distinct() : lowest).Select(up => Length.FromMeters(up))];
    }

    private static IReadOnlyList<double> Levels(FrameResult frame, Func<FrameMemberRole, bool> counts)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        return [.. frame.Members.Where(member => counts(member.Role)).Select(member => Math.Round(places[member.From].Up, Decimals)).Distinct().Order()];
    }
}
