using StudioKit.Kits.SetUps;
using StudioKit.Kits.Triggers;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Firing;

namespace StudioKit.Planning.Checks;

/// <summary>Whether every flash is fired, set-up by set-up.</summary>
internal static class TriggerChecks
{
    // Direct sun, thin cloud before it counted (common practice, no source).
    private static readonly ExposureValue Sunny = new(14);

    /// <summary>A check for each set-up with flashes; none where the kit says nothing of what fires them.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan) => plan.Kit.Triggers.Count == 0
        ? []
        : plan.Kit.SetUps.Select(setUp => (SetUp: setUp, Faults: new TriggerFaults(plan, setUp))).Where(pair => pair.Faults.Lights.Count > 0).Select(pair => Of(plan, pair.SetUp, pair.Faults));

    private static PlanCheck Of(Plan plan, SetUpSpec setUp, TriggerFaults triggers)
    {
        var faults = triggers.All().ToList();
        return new PlanCheck
        {
            Kind = PlanCheckKind.Triggers,
            Parts = [setUp.Name],
            Passed = faults.Count == 0,
            Demand = new CheckAmount.HowMany(triggers.Lights.Count),
            Capacity = new CheckAmount.HowMany(triggers.Lights.Count - faults.Count),
            SourceKey = "CommonPractice",
            SourceLocator = "one hot shoe, one channel, a group for each power; straight ways, a fifth more for a cord",
            Findings = [.. faults.Select(fault => new CheckFinding.OfTrigger(fault))],
            Caveats = [.. triggers.Lights.Where(light => light.FiredBy is { Kind: TriggerKind.OpticalCell }).SelectMany(light => OfCell(plan, setUp, light, triggers.Lights)).Select(caveat => new CheckCaveat.OfTrigger(caveat))],
        };
    }

    private static IEnumerable<TriggerCaveat> OfCell(Plan plan, SetUpSpec setUp, LightPlan light, IReadOnlyList<LightPlan> lights)
    {
        if (light.Role.IsBackground())
        {
            yield return Caveat(TriggerCaveatKind.CellUnderSheet);
        }

        if ((setUp.Ambient ?? plan.Kit.Site.Ambient).AtIso100 >= Sunny.AtIso100)
        {
            yield return Caveat(TriggerCaveatKind.CellInSun);
        }

        if (lights.Any(other => other.Metered is not null && other.Place != light.Place))
        {
            yield return Caveat(TriggerCaveatKind.CellBeforeTime);
        }

        TriggerCaveat Caveat(TriggerCaveatKind kind) => new(kind, light.Flash, light.FiredBy!.Trigger);
    }
}
