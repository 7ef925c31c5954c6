using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Mending;

/// <summary>Upright sheets that stand.</summary>
internal static class UprightStandMends
{
    private const int MostPlanned = 4;

    /// <summary>What the check of the sheet alone passes with.</summary>
    public static IEnumerable<ValueList<KitChange>> Standing(PlanCheck check, Plan plan) =>
        UprightRetrial.Passing(check.Kind, check.Parts[0], plan).Take(MostPlanned).Select(change => (ValueList<KitChange>)[change]);
}
