using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Every height of a frame that a builder needs, from the ground up.</summary>
internal static class FrameHeights
{
    // Rails nearer than a tenth of a millimetre lie at one height.
    private const int Decimals = 4;

    public static IReadOnlyList<FrameHeight> Of(FrameResult frame, IReadOnlyList<FlashBelow> flashes) =>
    [
        .. Feet(frame).Concat(Rails(frame)).Concat(Windows(flashes))
            .Append(new FrameHeight(FrameHeightKind.PanelUnderside, frame.PanelHeight, []))
            .OrderBy(height => height.Height),
    ];

    private static IEnumerable<FrameHeight> Feet(FrameResult frame) => frame.Feet
        .Select(foot => Math.Round(foot.LevelExtension.Meters, Decimals)).Distinct()
        .Select(up => new FrameHeight(FrameHeightKind.CapFloor, Length.FromMeters(up), []));

    private static IEnumerable<FrameHeight> Rails(FrameResult frame)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        return frame.Members
            .Where(member => Math.Abs(places[member.From].Up - places[member.To].Up) < 1e-6)
            .GroupBy(member => Math.Round(places[member.From].Up, Decimals))
            .Select(level => new FrameHeight(
                level.Any(member => member.Role == FrameMemberRole.CradleRail) ? FrameHeightKind.CradleRail : FrameHeightKind.Rail,
                Length.FromMeters(level.Key),
                [.. level.Select(member => member.Label)]));
    }

    private static IEnumerable<FrameHeight> Windows(IReadOnlyList<FlashBelow> flashes) => flashes
        .Select(flash => Math.Round(flash.Window.Up, Decimals)).Distinct()
        .Select(up => new FrameHeight(FrameHeightKind.FlashWindow, Length.FromMeters(up), []));
}
