using StudioKit.Planning;
using StudioKit.Planning.Studio;

namespace StudioKit.Wording;

/// <summary>Heights of a frame in a few words.</summary>
internal static class FrameHeightText
{
    /// <summary>The height and what it is of.</summary>
    public static string Of(FrameHeight height) => $"{What(height.Kind)} {CutFormat.CutLength(height.Height)}";

    private static string What(FrameHeightKind kind) => kind switch
    {
        FrameHeightKind.CapFloor => "cap's floor",
        FrameHeightKind.Rail => "rail",
        FrameHeightKind.CradleRail => "rail with the flash",
        FrameHeightKind.FlashWindow => "flash window",
        FrameHeightKind.PanelUnderside => "panel, underside",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A height without words."),
    };
}
