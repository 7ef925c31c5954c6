using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Mending;

/// <summary>Finds a check of one plan again in the plan of a changed kit.</summary>
public static class CheckLikeness
{
    /// <summary>Whether two checks ask the same of the same thing.</summary>
    /// <param name="one">A check.</param>
    /// <param name="other">A check of another plan.</param>
    public static bool IsSame(PlanCheck one, PlanCheck other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.Kind == other.Kind && About(one).SequenceEqual(About(other)) && (!GoesByDemand(one) || one.Demand == other.Demand);
    }

    /// <summary>Parts by which a check is told from others of its kind; empty where a plan has but one of them.</summary>
    /// <param name="check">A check.</param>
    public static IReadOnlyList<string> About(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Kind switch
        {
            PlanCheckKind.Magnification or PlanCheckKind.RoomBeforeLens or PlanCheckKind.GuideNumberAtZoom or PlanCheckKind.Exposure or PlanCheckKind.Triggers or PlanCheckKind.Hands or PlanCheckKind.Feature or PlanCheckKind.BagMass
                or PlanCheckKind.BagRoom or PlanCheckKind.Burden or PlanCheckKind.UprightSize or PlanCheckKind.UprightGround or PlanCheckKind.FlashBehind or PlanCheckKind.HoldTime or PlanCheckKind.Cells or PlanCheckKind.Hours or PlanCheckKind.DayTime
                or PlanCheckKind.UprightTipping or PlanCheckKind.UprightSliding or PlanCheckKind.UprightPoles or PlanCheckKind.UprightSheet or PlanCheckKind.UprightSheetLeaning or PlanCheckKind.UprightReach => check.Parts,

            // Under another cover it is still the set-up's.
            PlanCheckKind.CoverRoom or PlanCheckKind.CoverFoot or PlanCheckKind.CoverView or PlanCheckKind.CoverWarmth => [check.Parts[1]],
            PlanCheckKind.ShelterSize or PlanCheckKind.ShelterWind => check.Parts,

            // What it is about; the others say where.
            PlanCheckKind.Cradle or PlanCheckKind.LongThing => [check.Parts[0]],
            _ => [],
        };
    }

    /// <summary>Whether a check is told from others of the same parts by what it demands, as a lens may be asked for several magnifications.</summary>
    /// <param name="check">A check.</param>
    public static bool GoesByDemand(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Kind == PlanCheckKind.Magnification;
    }

    /// <summary>Whether a check passes in another plan; one that is no longer asked for does.</summary>
    /// <param name="check">The check.</param>
    /// <param name="plan">The other plan.</param>
    public static bool PassesIn(PlanCheck check, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Checks.All(found => found.Passed || !IsSame(check, found));
    }

    /// <summary>Checks of a plan that fail and do not in the one before.</summary>
    /// <param name="before">The plan before.</param>
    /// <param name="after">The plan after.</param>
    public static IReadOnlyList<PlanCheck> Broken(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(after);
        return [.. after.Checks.Where(check => !check.Passed && PassesIn(check, before))];
    }
}
