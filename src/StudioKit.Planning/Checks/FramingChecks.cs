using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether each framing can be reached, and leaves the subject room before the glass.</summary>
internal static class FramingChecks
{
    /// <summary>A failing check for each framing out of reach or touching its subject.</summary>
    public static IEnumerable<PlanCheck> Of(IReadOnlyList<FramingPlan> framings) =>
        framings.Where(framing => !framing.Reached).Select(OutOfReach)
            .Concat(framings.Where(framing => framing.Reached && framing.WorkingDistance <= Length.Zero).Select(Touching));

    private static PlanCheck OutOfReach(FramingPlan framing) => new()
    {
        Kind = PlanCheckKind.Magnification,
        Parts = [framing.Lens],
        Passed = false,
        Demand = new CheckAmount.Enlargement(framing.Magnification),
        SourceKey = "Derived",
        SourceLocator = "optical stack of every combination on hand",
        Findings = [new CheckFinding.OutOfReach(framing.Limit!)],
    };

    private static PlanCheck Touching(FramingPlan framing) => new()
    {
        Kind = PlanCheckKind.RoomBeforeLens,
        Parts = [framing.Name],
        Passed = false,
        Capacity = new CheckAmount.Measure(framing.WorkingDistance),
        SourceKey = "Derived",
        SourceLocator = "working distance of the optical stack",
        Remedy = new CheckRemedy(CheckRemedyKind.LowerMagnification) { Keys = ["lenses.magnifications"] },
    };
}
