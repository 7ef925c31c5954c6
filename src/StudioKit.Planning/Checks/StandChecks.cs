using StudioKit.Planning.Standing;

namespace StudioKit.Planning.Checks;

/// <summary>Whether the lights about the subject stand where they can.</summary>
internal static class StandChecks
{
    /// <summary>A check for each thing that can be wrong with all of them together.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan)
    {
        if (plan.LightStands.Count == 0)
        {
            yield break;
        }

        yield return Of(plan, PlanCheckKind.LensShadow, plan.LightStands, LightFaultKind.BehindLens);
        yield return Of(plan, PlanCheckKind.LightsOutOfPicture, plan.LightStands, LightFaultKind.InPicture, LightFaultKind.HolderInPicture);
        yield return Of(plan, PlanCheckKind.LightRoom, plan.LightStands, LightFaultKind.MeetsLens, LightFaultKind.MeetsSheet, LightFaultKind.MeetsFrame, LightFaultKind.MeetsGround);
        if (plan.LightStands.Where(stand => stand.Holder is not null).ToList() is { Count: > 0 } held)
        {
            yield return Of(plan, PlanCheckKind.HolderReach, held, LightFaultKind.OutOfReach, LightFaultKind.TooLow, LightFaultKind.TooHigh);
        }

        if (plan.LightStands.Where(stand => stand.SheetLevel is not null).ToList() is { Count: > 0 } over)
        {
            yield return Of(plan, PlanCheckKind.LightOnSheet, over, LightFaultKind.Glare, LightFaultKind.Brightens);
        }
    }

    private static PlanCheck Of(Plan plan, PlanCheckKind kind, IReadOnlyList<LightStandPlan> stands, params LightFaultKind[] faults)
    {
        var findings = stands.SelectMany(stand => stand.Faults.Where(fault => faults.Contains(fault.Kind)).Select(fault => new CheckFinding.OfStand(stand, fault)))
            .GroupBy(finding => (finding.Stand.SetUp, finding.Stand.Place, finding.Fault.Kind))
            .Select(alike => alike.MaxBy(Weight)!)
            .ToList();
        var lights = stands.Select(stand => (stand.SetUp, stand.Place)).Distinct().Count();
        return new PlanCheck
        {
            Kind = kind,
            Passed = findings.Count == 0,
            Demand = new CheckAmount.HowMany(lights),
            Capacity = new CheckAmount.HowMany(lights - findings.Select(finding => (finding.Stand.SetUp, finding.Stand.Place)).Distinct().Count()),
            SourceKey = kind == PlanCheckKind.LightOnSheet ? "BornWolf1999" : "Derived",
            SourceLocator = kind == PlanCheckKind.LightOnSheet ? "law of reflection and Fresnel formulae, §1.5; cosine law on the matt sheet" : "geometry about the subject",
            Findings = [.. findings],
            Remedy = findings.Count == 0 || plan.IsWithoutRemedies ? null : RemedyOf(plan, findings[0]),
        };
    }

    private static double Weight(CheckFinding.OfStand finding) => finding.Fault switch
    {
        { Share: { } share } => share,
        { By: { } by } => by.Meters,
        { Over: { } over } => over.Value,
        _ => 0,
    };

    // The nearest direction in which nothing is wrong with it; where there is none, another holder.
    private static CheckRemedy? RemedyOf(Plan plan, CheckFinding.OfStand finding)
    {
        var search = new StandSearch(plan);
        var (setUp, place) = (finding.Stand.SetUp, finding.Stand.Place);
        foreach (var to in search.Directions(setUp, place).Take(1))
        {
            return new CheckRemedy(CheckRemedyKind.LightFromElsewhere)
            {
                Amount = new CheckAmount.Directed(to),
                Parts = [finding.Stand.Flash, setUp],
                Keys = ["set-ups.lights.azimuth", "set-ups.lights.elevation"],
            };
        }

        return search.Holders(setUp, place).Select(holder => new CheckRemedy(CheckRemedyKind.OtherHolder)
        {
            Parts = holder is null ? [finding.Stand.Flash, setUp] : [finding.Stand.Flash, setUp, holder],
            Keys = ["set-ups.lights.holder", "holders.reach"],
        }).FirstOrDefault();
    }
}
