using StudioKit.Physics.Structure;

namespace StudioKit.Planning.Checks;

/// <summary>Whether panel and frame bear what is asked of them on the site.</summary>
internal static class StructureChecks
{
    /// <summary>Every structural check of a plan with a frame.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan, FramePlan frame)
    {
        var checks = frame.StructuralChecks;
        var retrial = new StructuralRetrial(plan.Kit, plan.PlannedFramings, checks, frame.Geometry.Problems.Count);
        return checks.Select(check => new PlanCheck
        {
            Kind = KindOf(check.Kind),
            Parts = check.Parts,
            Passed = check.Holds,
            Demand = new CheckAmount.Measure(check.Demand),
            Capacity = new CheckAmount.Measure(check.Capacity),
            Ratio = check.Ratio,
            Loads = check.Loads,
            SourceKey = check.SourceKey,
            SourceLocator = check.Locator,
            Remedy = check.Holds || plan.IsWithoutRemedies ? null : StructureRemedies.Of(retrial.For(check), check),
            Caveats = [.. check.Caveats.Select(caveat => new CheckCaveat.OfStructure(caveat))],
        });
    }

    internal static PlanCheckKind KindOf(StructuralCheckKind kind) => kind switch
    {
        StructuralCheckKind.PanelSag => PlanCheckKind.PanelSag,
        StructuralCheckKind.PanelStress => PlanCheckKind.PanelStress,
        StructuralCheckKind.PanelStressUnderElbow => PlanCheckKind.PanelStressUnderElbow,
        StructuralCheckKind.SweepBentCold => PlanCheckKind.SweepBentCold,
        StructuralCheckKind.SheetGrowth => PlanCheckKind.SheetGrowth,
        StructuralCheckKind.RailSag => PlanCheckKind.RailSag,
        StructuralCheckKind.RailStress => PlanCheckKind.RailStress,
        StructuralCheckKind.LegBuckling => PlanCheckKind.LegBuckling,
        StructuralCheckKind.Sway => PlanCheckKind.Sway,
        StructuralCheckKind.Cords => PlanCheckKind.Cords,
        StructuralCheckKind.PipeWarmth => PlanCheckKind.PipeWarmth,
        StructuralCheckKind.Tipping => PlanCheckKind.Tipping,
        StructuralCheckKind.Sliding => PlanCheckKind.Sliding,
        StructuralCheckKind.UprightTipping => PlanCheckKind.UprightTipping,
        StructuralCheckKind.UprightSliding => PlanCheckKind.UprightSliding,
        StructuralCheckKind.UprightPoles => PlanCheckKind.UprightPoles,
        StructuralCheckKind.UprightSheet => PlanCheckKind.UprightSheet,
        StructuralCheckKind.UprightSheetLeaning => PlanCheckKind.UprightSheetLeaning,
        StructuralCheckKind.UprightReach => PlanCheckKind.UprightReach,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a structural check that a plan knows."),
    };
}
