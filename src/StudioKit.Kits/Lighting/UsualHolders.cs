using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>How far holders go where a kit does not say (common practice, no source).</summary>
internal static class UsualHolders
{
    public static Length Lowest(HolderKind kind) => Length.FromCentimeters(kind == HolderKind.Stand ? 45 : 0);

    public static Length Highest(HolderKind kind) => Length.FromCentimeters(kind == HolderKind.Stand ? 190 : 20);

    public static Length Reach(HolderKind kind) => Length.FromCentimeters(kind switch
    {
        HolderKind.Stand => 30,
        HolderKind.Arm => 60,
        HolderKind.Clamp => 15,
        HolderKind.Hand => 75,
        _ => 0,
    });
}
