using StudioKit.Kits;
using StudioKit.Kits.Subjects;
using StudioKit.Planning.Handling;

namespace StudioKit.Planning.Session;

/// <summary>Subjects, set-ups and exposures → a session, block by block of one light each.</summary>
internal static class SessionPlanner
{
    // Of equal hold limits, wet skins first, which dry out; plants and things last, which wait.
    private static readonly SubjectGroup[] MostFragileFirst =
    [
        SubjectGroup.Amphibians, SubjectGroup.WaterAnimals, SubjectGroup.SmallMammals, SubjectGroup.Snails, SubjectGroup.FlyingInsects, SubjectGroup.CrawlingInsectsAndSpiders, SubjectGroup.CentipedesAndMillipedes,
        SubjectGroup.Scorpions, SubjectGroup.Reptiles, SubjectGroup.PlantsAndFungi, SubjectGroup.LifelessThings,
    ];

    /// <summary>Plans the session; none where no subject can be photographed whole.</summary>
    public static SessionPlan? Plan(KitSpec kit, IReadOnlyList<ExposurePlan> exposures, IReadOnlyList<LightBearing> bearings)
    {
        var (groups, fewestGroups) = LightGroups.Of([.. bearings.Select(bearing => WindowOf(kit, bearing))]);
        var day = DayCourse.Of(kit.Site);
        var drafts = BlockDrafts.Of(kit, BlockOrder.Of(groups), exposures, day);
        var timeline = new SessionTimeline(kit);
        var blocks = BlockTimes.Placed(drafts, [.. drafts.Select(draft => BlockOf(kit, draft, timeline))], day);
        if (blocks.Count == 0)
        {
            return null;
        }

        var proven = fewestGroups && drafts.All(draft => draft.Proven);
        var subjects = drafts.SelectMany(draft => draft.Route.Visits).Select(visit => visit.Subject).Distinct();
        return new SessionPlan
        {
            Blocks = blocks,
            Subjects = [.. subjects.Select(subject => SubjectOf(kit, subject, blocks))],
            Flashes = FlashUses.Of(kit, blocks, exposures),
            Rounds = kit.Session.Rounds,
            ProvenFewest = proven,
            Notes = [.. SessionNotes.Of(kit, exposures, blocks, proven)],
        };
    }

    /// <summary>First what is photographed where it sits, place by place; then the subjects by fragility, each to its end before the next is fetched.</summary>
    public static IReadOnlyList<IReadOnlyList<IReadOnlyList<SessionVisit>>> Ranks(KitSpec kit, IReadOnlyList<ExposurePlan> exposures)
    {
        var visits = kit.Subjects.SelectMany(subject => Visits(kit, subject, exposures)).ToList();
        var whereTheySit = visits.Where(visit => visit.WhereItSits).GroupBy(visit => visit.Place).Select(place => (IReadOnlyList<SessionVisit>)[.. place]);
        var onTheSheet = visits.Where(visit => !visit.WhereItSits)
            .GroupBy(visit => Fragility(kit, visit.Subject))
            .OrderBy(rank => rank.Key)
            .Select(rank => rank.GroupBy(visit => visit.Subject.Name, StringComparer.Ordinal).Select(subject => (IReadOnlyList<SessionVisit>)[.. subject]).ToList());
        return [[.. whereTheySit], .. onTheSheet];
    }

    private static SetUpWindow WindowOf(KitSpec kit, LightBearing bearing)
    {
        var setUp = kit.SetUps.First(candidate => candidate.Name == bearing.SetUp);
        return new SetUpWindow
        {
            SetUp = bearing.SetUp,
            Planned = setUp.LightWindow?.Nearest(bearing.Planned) ?? bearing.Planned,
            Works = bearing.Works,
            Light = setUp.LightWindow ?? bearing.Works,
            IsGiven = setUp.LightWindow is not null,
            Clock = setUp.Clock,
        };
    }

    private static SessionBlock BlockOf(KitSpec kit, BlockDraft draft, SessionTimeline timeline)
    {
        var first = timeline.Round(draft.Route);
        return new SessionBlock
        {
            SetUps = [.. draft.Group.SetUps],
            Only = draft.Only,
            Planned = draft.Group.Planned,
            Light = draft.Group.Light,
            Clock = draft.Group.Clock,
            First = first,
            Following = kit.Session.Rounds > 1 ? timeline.Round(draft.Route) : null,
            Rounds = kit.Session.Rounds,
        };
    }

    private static (double LimitSeconds, int Group) Fragility(KitSpec kit, SubjectSpec subject) =>
        (HandlingPlanner.LimitOf(kit, subject)?.Seconds ?? double.PositiveInfinity, Array.IndexOf(MostFragileFirst, subject.Group));

    private static IEnumerable<SessionVisit> Visits(KitSpec kit, SubjectSpec subject, IReadOnlyList<ExposurePlan> exposures) =>
        kit.SetUps.Select(setUp => LightBearing.Taken(setUp.Name, subject, exposures)).OfType<ExposurePlan>()
            .Select(exposure => new SessionVisit(subject, exposure, Held: false))
            .Select(visit => visit with { Held = !visit.WhereItSits && HandlingPlanner.LimitOf(kit, subject) is not null });

    private static SessionSubject SubjectOf(KitSpec kit, SubjectSpec subject, IReadOnlyList<SessionBlock> blocks) => new()
    {
        Name = subject.Name,
        Group = subject.Group,
        HoldTime = blocks.Select(block => block.LongestHold(subject.Name)).Max(),
        HoldLimit = HandlingPlanner.LimitOf(kit, subject),
    };
}
