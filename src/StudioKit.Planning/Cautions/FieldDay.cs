using StudioKit.Kits.Session;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Cautions;

/// <summary>What a day in the field brings to the people themselves.</summary>
internal static class FieldDay
{
    // Common practice, no published source: who works slowly in light clothes feels nothing under the first for hours, and needs water and breaks from the second on.
    private static readonly Temperature WarmForLong = Temperature.FromDegreesCelsius(20);
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(25);
    private static readonly Duration Long = Duration.FromHours(2);

    private static readonly CautionSheet[] OnSession = [CautionSheet.Session];

    /// <summary>Ticks, heat and being alone; nothing where there is no session.</summary>
    public static IEnumerable<PlanCaution> Of(Plan plan)
    {
        if (plan.Session is not { } session)
        {
            yield break;
        }

        yield return new PlanCaution { Kind = CautionKind.Ticks, Sheets = OnSession };
        if (plan.Day?.Hours.Any(hour => hour.ShadowOverHeight is not null) == true)
        {
            yield return new PlanCaution { Kind = CautionKind.Sun, Sheets = OnSession };
        }

        ValueList<int> channels = [.. plan.Exposures.SelectMany(exposure => exposure.Lights).Select(light => light.FiredBy?.Channel).OfType<int>().Distinct().Order()];
        if (channels.Count > 0)
        {
            yield return new PlanCaution { Kind = CautionKind.SharedChannel, Sheets = OnSession, Channels = channels };
        }

        ValueList<ShelterPlan> shelters = [.. plan.Exposures.SelectMany(exposure => exposure.Shelters).DistinctBy(shelter => shelter.Name)];
        if (shelters.Count > 0)
        {
            yield return new PlanCaution { Kind = CautionKind.BlowsAway, Sheets = OnSession, Shelters = shelters };
        }

        var day = session.Time;
        if (plan.Kit.Pack.People.Count < 2)
        {
            yield return new PlanCaution { Kind = CautionKind.LoneWork, Sheets = OnSession, Day = day };
        }

        if (IsHot(plan.Kit.Site, day))
        {
            yield return new PlanCaution { Kind = CautionKind.Heat, Sheets = OnSession, Day = day, Air = plan.Kit.Site.Temperature };
        }
    }

    private static bool IsHot(SiteSpec site, Duration day) => site.Temperature >= Warm || (site.Temperature >= WarmForLong && day >= Long);
}
