using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Physics;

namespace StudioKit.Planning.Session;

/// <summary>A block before its times are known: set-ups of one light, for subjects that are about at one time.</summary>
/// <param name="Group">The set-ups.</param>
/// <param name="Kit">The kit with these subjects alone.</param>
/// <param name="Route">Their visits in order.</param>
/// <param name="Proven">Whether no order changes less.</param>
/// <param name="Only">Names of the subjects, where others of the set-ups have a block of their own; else empty.</param>
/// <param name="Active">When the subjects are about, each time once.</param>
internal sealed record BlockDraft(LightGroup Group, KitSpec Kit, SessionRoute Route, bool Proven, ValueList<string> Only, ValueList<ActiveTime> Active)
{
    /// <summary>When it can be gone through on a day.</summary>
    public IReadOnlyList<LightTime> Times(DayCourse day) => day.Times(Group.Light, Group.Clock, Active);
}
