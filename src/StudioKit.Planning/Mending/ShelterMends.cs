using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Mending;

/// <summary>Shades and wind-breaks exchanged for others of the kit, and hands freed to hold them.</summary>
internal static class ShelterMends
{
    /// <summary>Another shelter of the same kind instead.</summary>
    public static IEnumerable<ValueList<KitChange>> Others(PlanCheck check, Plan plan)
    {
        var now = plan.Kit.Shelters.FirstOrDefault(shelter => shelter.Name == check.Parts[0]);
        return plan.Kit.Shelters.Where(shelter => shelter.Name != check.Parts[0] && shelter.Shades == now?.Shades)
            .Select(shelter => (ValueList<KitChange>)[new KitChange.PutUpInstead(check.Parts[1], check.Parts[0], shelter.Name)]);
    }

    /// <summary>A light that a hand holds given to a holder that no other light has.</summary>
    public static IEnumerable<ValueList<KitChange>> Freed(PlanCheck check, Plan plan)
    {
        var setUp = plan.Kit.SetUps.First(candidate => candidate.Name == check.Parts[0]);
        return from light in setUp.Lights.Select((light, place) => (light, place))
               where !light.light.Role.IsBackground() && plan.Kit.Holders.FirstOrDefault(holder => holder.Name == light.light.Holder) is null or { Kind: HolderKind.Hand }
               from holder in plan.Kit.Holders
               where holder.Kind != HolderKind.Hand && setUp.Lights.All(other => other.Holder != holder.Name)
               select (ValueList<KitChange>)[new KitChange.Hold(setUp.Name, light.place, holder.Name)];
    }
}
