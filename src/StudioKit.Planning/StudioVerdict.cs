using StudioKit.Planning.Checks;

namespace StudioKit.Planning;

/// <summary>A plan in one answer: can the studio be built, and do the cards hold?</summary>
/// <param name="Builds">Whether there is a panel with its frame or an upright sheet to build; none of the set-ups may need one.</param>
/// <param name="Cards">Cards in all: one for each framing of each set-up.</param>
/// <param name="AtTheEdge">Cards that hold, but only at the edge.</param>
/// <param name="Failing">Cards that do not hold.</param>
/// <param name="InTheWay">Checks that fail, in the order of the work.</param>
public sealed record StudioVerdict(bool Builds, int Cards, int AtTheEdge, int Failing, IReadOnlyList<PlanCheck> InTheWay)
{
    /// <summary>The verdict on a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException">There is no plan.</exception>
    public static StudioVerdict Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            plan.Panel.RequiredWidth > UnitsNet.Length.Zero || plan.Workshop is not null,
            plan.Exposures.Count,
            plan.Exposures.Count(exposure => exposure.Verdict.Verdict == Verdict.AtTheEdge && exposure.IsUsable),
            plan.Exposures.Count(exposure => !exposure.IsUsable),
            [.. plan.Checks.Where(check => !check.Passed)]);
    }

    /// <summary>Whether nothing stands in the way of building it.</summary>
    public bool CanBeBuilt => Failed(CheckConcern.Building).Count == 0;

    /// <summary>Checks of one concern that fail.</summary>
    /// <param name="concern">The concern.</param>
    public IReadOnlyList<PlanCheck> Failed(CheckConcern concern) => [.. InTheWay.Where(check => CheckConcerns.Of(check.Kind) == concern)];
}
