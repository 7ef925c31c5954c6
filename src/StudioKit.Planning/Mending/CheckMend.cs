using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Mending;

/// <summary>Changes of a kit after which a check passes, found by planning the changed kit as a whole.</summary>
/// <param name="Changes">The changes, in order.</param>
/// <param name="After">The plan of the changed kit.</param>
/// <param name="Breaks">Checks that fail after the changes and did not before; empty where none does.</param>
public sealed record CheckMend(ValueList<KitChange> Changes, Plan After, IReadOnlyList<PlanCheck> Breaks);
