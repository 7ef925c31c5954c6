using StudioKit.Kits.Triggers;
using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Firing;

namespace StudioKit.Planning.Mending;

/// <summary>Flashes fired by something else, or as many carried as are needed, on one channel and in groups of their own.</summary>
internal static class TriggerMends
{
    /// <summary>What may help the first flash that is not fired.</summary>
    public static IEnumerable<ValueList<KitChange>> Of(PlanCheck check, Plan plan)
    {
        if (check.Findings.OfType<CheckFinding.OfTrigger>().FirstOrDefault()?.Fault is not { } fault)
        {
            return [];
        }

        return fault switch
        {
            { Kind: TriggerFaultKind.UsedTwice, Counts: { } counts } => Others(fault, plan).Prepend([new KitChange.CarryTriggers(fault.Trigger!, counts.Needed)]),
            { Kind: TriggerFaultKind.OtherChannel, Channels: { } channels } => [[new KitChange.Tune(fault.Trigger!, channels.Senders)]],
            { Kind: TriggerFaultKind.UnknownGroup or TriggerFaultKind.SharesGroup } => Groups(fault, plan).Concat(Others(fault, plan)),
            _ => Others(fault, plan),
        };
    }

    private static IEnumerable<ValueList<KitChange>> Others(TriggerFault fault, Plan plan) => plan.Kit.Triggers
        .Where(trigger => trigger.Kind != TriggerKind.RadioSender && trigger.Name != fault.Trigger && (trigger.BuiltInto ?? fault.Flash) == fault.Flash)
        .OrderBy(trigger => trigger.Kind)
        .Select(trigger => (ValueList<KitChange>)[new KitChange.Fire(fault.SetUp, fault.Place, trigger.Name)]);

    private static IEnumerable<ValueList<KitChange>> Groups(TriggerFault fault, Plan plan)
    {
        var setUp = plan.Kit.SetUps.First(candidate => candidate.Name == fault.SetUp);
        var most = Math.Min(plan.Kit.SenderOf(setUp)?.Groups ?? 1, plan.Kit.TriggerOf(setUp.Lights[fault.Place])?.Groups ?? 1);
        return Enumerable.Range(0, most).Select(TriggerGroup.Letter)
            .Where(letter => letter != fault.Group)
            .OrderBy(letter => setUp.Lights.Count(light => light.Trigger is not null && light.Group == letter))
            .Select(letter => (ValueList<KitChange>)[new KitChange.Regroup(fault.SetUp, fault.Place, letter)]);
    }
}
