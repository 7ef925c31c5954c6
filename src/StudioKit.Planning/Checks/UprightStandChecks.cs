using StudioKit.Physics.Structure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether upright sheets stand in the wind of the site.</summary>
internal static class UprightStandChecks
{
    /// <summary>Every check of every upright sheet that stands.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan) => (plan.Workshop?.Uprights ?? []).SelectMany(stand => stand.Checks.Select(check => Of(plan, stand, check)));

    private static PlanCheck Of(Plan plan, UprightStandPlan stand, StructuralCheck check) => new()
    {
        Kind = StructureChecks.KindOf(check.Kind),
        Parts = [stand.Name],
        Passed = check.Holds,
        Demand = new CheckAmount.Measure(check.Demand),
        Capacity = new CheckAmount.Measure(check.Capacity),
        Ratio = check.Ratio,
        Loads = check.Loads,
        SourceKey = check.SourceKey,
        SourceLocator = check.Locator,
        Remedy = check.Holds ? null : Remedy(plan, stand, StructureChecks.KindOf(check.Kind)),
        Caveats = [.. check.Caveats.Select(caveat => new CheckCaveat.OfStructure(caveat))],
    };

    private static CheckRemedy Remedy(Plan plan, UprightStandPlan stand, PlanCheckKind kind) => UprightRetrial.Passing(kind, stand.Name, plan).FirstOrDefault() switch
    {
        KitChange.Strengthen { Change: StructuralChange.OtherPipe pipe } => new CheckRemedy(CheckRemedyKind.OtherPipe) { Parts = [pipe.Stocked.Pipe.Name], Keys = ["frame.pipe", "frame.fittings"] },
        KitChange.Restand restand => new CheckRemedy(CheckRemedyKind.StandOtherwise) { Restand = restand, Keys = [restand.Key, .. restand.PegHold is null ? [] : new[] { "uprights.peg-hold" }] },

        // Nothing that was tried does: what is left is to keep out of the wind.
        _ => new CheckRemedy(CheckRemedyKind.OutOfWind) { Amount = new CheckAmount.Measure(Tenths(stand.HighestMean)), Keys = ["site.wind", "uprights.width", "uprights.height"] },
    };

    private static Speed Tenths(Speed speed) => Speed.FromMetersPerSecond(Math.Floor(speed.MetersPerSecond * 10) / 10);
}
