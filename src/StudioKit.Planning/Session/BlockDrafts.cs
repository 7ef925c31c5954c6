using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Subjects;

namespace StudioKit.Planning.Session;

/// <summary>Groups of set-ups → drafts of blocks: subjects that are about at other hours have a block of their own.</summary>
/// <remarks>Subjects share a block where the day has a stretch with its light, at its hours, while all of them are about, in which all its rounds fit.</remarks>
internal static class BlockDrafts
{
    /// <summary>The drafts, in the order of the day.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="groups">Groups of set-ups, in the order of the day as far as no sun is looked at.</param>
    /// <param name="exposures">Their exposures.</param>
    /// <param name="day">The day.</param>
    public static IReadOnlyList<BlockDraft> Of(KitSpec kit, IReadOnlyList<LightGroup> groups, IReadOnlyList<ExposurePlan> exposures, DayCourse day)
    {
        var drafts = groups.Select(group => Parted(kit, group, exposures, day).OrderBy(draft => Begin(draft, day)).ToList()).ToList();
        return day.KnowsTheSun ? [.. drafts.SelectMany(of => of).OrderBy(draft => Begin(draft, day))] : [.. drafts.SelectMany(of => of)];
    }

    private static List<BlockDraft> Parted(KitSpec kit, LightGroup group, IReadOnlyList<ExposurePlan> exposures, DayCourse day)
    {
        IReadOnlyList<ExposurePlan> own = [.. exposures.Where(exposure => group.SetUps.Any(setUp => setUp.SetUp == exposure.SetUp))];
        var visited = kit.Subjects.Where(subject => group.SetUps.Any(setUp => LightBearing.Taken(setUp.SetUp, subject, own) is not null)).ToList();
        var parts = new List<List<SubjectSpec>>();
        foreach (var alike in visited.GroupBy(subject => When(subject, day)).OrderBy(alike => alike.Key is null ? 0 : 1))
        {
            if (parts.Find(part => Fits(Draft([.. part, .. alike]), day)) is { } together)
            {
                together.AddRange(alike);
            }
            else
            {
                parts.Add([.. alike]);
            }
        }

        return parts.ConvertAll(part => Draft(part));

        BlockDraft Draft(IReadOnlyList<SubjectSpec> subjects)
        {
            var (route, proven) = SessionOrder.Of(SessionPlanner.Ranks(kit with { Subjects = [.. kit.Subjects.Where(subjects.Contains)] }, own));
            return new BlockDraft(
                group, kit, route, proven,
                subjects.Count == visited.Count ? [] : [.. kit.Subjects.Where(subjects.Contains).Select(subject => subject.Name)],
                [.. subjects.Select(subject => When(subject, day)).OfType<ActiveTime>().Distinct()]);
        }
    }

    private static ActiveTime? When(SubjectSpec subject, DayCourse day) => subject.Active is { } active && day.Knows(active) ? active : null;

    private static bool Fits(BlockDraft draft, DayCourse day)
    {
        var timeline = new SessionTimeline(draft.Kit);
        var needed = timeline.Round(draft.Route).Time;
        needed += (draft.Kit.Session.Rounds - 1) * timeline.Round(draft.Route).Time;
        return draft.Times(day).Any(time => time.Length >= needed);
    }

    // The day's end where there is no time for it at all.
    private static int Begin(BlockDraft draft, DayCourse day) => draft.Times(day).Select(time => time.From).DefaultIfEmpty(int.MaxValue).Min();
}
