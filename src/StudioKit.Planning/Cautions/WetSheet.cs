namespace StudioKit.Planning.Cautions;

/// <summary>Living things that are kept wet, over flashes that are charged.</summary>
internal static class WetSheet
{
    /// <summary>The caution, with the subjects and the flashes that lie under them; none where nothing wet meets a flash.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="below">Its flashes under the sheet.</param>
    public static PlanCaution? Over(Plan plan, IReadOnlyList<FlashUnderSheet> below)
    {
        var keptWet = plan.Kit.Handling.Where(guide => guide.KeptWet).Select(guide => guide.Group).ToHashSet();
        var wet = plan.Kit.Subjects.Where(subject => subject.Wet || keptWet.Contains(subject.Group)).ToList();
        var met = below.Where(flash => flash.SetUps.Any(setUp => wet.Exists(subject => Stands(subject.Name, setUp)))).ToList();
        var standing = wet.Where(subject => met.Exists(flash => flash.SetUps.Any(setUp => Stands(subject.Name, setUp)))).ToList();
        return met.Count == 0 ? null : new PlanCaution
        {
            Kind = CautionKind.WetSheetOverFlash,
            Sheets = [CautionSheet.Build, CautionSheet.Session, CautionSheet.Handling],
            Groups = [.. standing.Select(subject => subject.Group).Distinct()],
            Subjects = [.. standing.Select(subject => subject.Name)],
            Flashes = met,
        };

        bool Stands(string subject, string setUp) =>
            plan.Kit.SetUps.Any(one => one.Name == setUp && one.IsFor(subject));
    }
}
