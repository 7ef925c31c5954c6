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
        Name = $"Magnification, {framing.Lens}",
        Passed = false,
        Demand = framing.Magnification.Nominal,
        Capacity = "not reached",
        SourceKey = "Derived",
        SourceLocator = "optical stack of every combination on hand",
        Remedy = framing.Limit!,
    };

    private static PlanCheck Touching(FramingPlan framing) => new()
    {
        Name = $"Room before the lens, {framing.Name}",
        Passed = false,
        Demand = "subject before the front glass",
        Capacity = $"{PlanFormat.Millimetres(framing.WorkingDistance)} from the glass",
        SourceKey = "Derived",
        SourceLocator = "working distance of the optical stack",
        Remedy = "Take a lower magnification, a shorter tube or a longer lens.",
    };
}
