using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Handling;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Subjects, set-ups and exposures → a session.</summary>
internal static class SessionPlanner
{
    // Of equal hold limits, wet skins first, which dry out; plants last, which wait.
    private static readonly SubjectGroup[] MostFragileFirst =
    [
        SubjectGroup.Amphibians, SubjectGroup.Snails, SubjectGroup.FlyingInsects, SubjectGroup.CrawlingInsectsAndSpiders, SubjectGroup.Reptiles, SubjectGroup.PlantsAndFungi,
    ];

    /// <summary>Plans the session; none where no subject can be photographed whole.</summary>
    public static SessionPlan? Plan(KitSpec kit, IReadOnlyList<ExposurePlan> exposures)
    {
        var (route, proven) = SessionOrder.Of(Ranks(kit, exposures));
        if (route.Visits.Count == 0)
        {
            return null;
        }

        var steps = new SessionTimeline(kit).Of(route);
        var subjects = route.Visits.Select(visit => visit.Subject).Distinct().Select(subject => SubjectOf(kit, subject, steps)).ToList();
        return new SessionPlan
        {
            Steps = steps,
            Subjects = subjects,
            Flashes = FlashesOf(kit, steps, exposures),
            Rounds = kit.Session.Rounds,
            ProvenFewest = proven,
            Notes = [.. Notes(kit, exposures, proven)],
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

    private static (double LimitSeconds, int Group) Fragility(KitSpec kit, SubjectSpec subject) =>
        (HandlingPlanner.LimitOf(kit, subject)?.Seconds ?? double.PositiveInfinity, Array.IndexOf(MostFragileFirst, subject.Group));

    private static IEnumerable<SessionVisit> Visits(KitSpec kit, SubjectSpec subject, IReadOnlyList<ExposurePlan> exposures) =>
        kit.SetUps.Select(setUp => Largest(setUp, subject, exposures)).OfType<ExposurePlan>()
            .Select(exposure => new SessionVisit(subject, exposure, Held: false))
            .Select(visit => visit with { Held = !visit.WhereItSits && HandlingPlanner.LimitOf(kit, subject) is not null });

    // The framing that fills the frame best; of equal ones the one with more room before the lens, for shy animals.
    private static ExposurePlan? Largest(SetUpSpec setUp, SubjectSpec subject, IReadOnlyList<ExposurePlan> exposures) => exposures
        .Where(exposure => exposure.SetUp == setUp.Name && exposure.IsUsable && exposure.Subjects.Contains(subject.Name))
        .OrderByDescending(exposure => exposure.Framing.Magnification.Value)
        .ThenByDescending(exposure => exposure.Framing.WorkingDistance)
        .FirstOrDefault();

    private static SessionSubject SubjectOf(KitSpec kit, SubjectSpec subject, IReadOnlyList<SessionStep> steps) => new()
    {
        Name = subject.Name,
        Group = subject.Group,
        HoldTime = Duration.FromSeconds(steps.Where(step => step.Held && step.Subject == subject.Name).Sum(step => step.Time.Seconds)),
        HoldLimit = HandlingPlanner.LimitOf(kit, subject),
    };

    private static IReadOnlyList<FlashUse> FlashesOf(KitSpec kit, IReadOnlyList<SessionStep> steps, IReadOnlyList<ExposurePlan> exposures)
    {
        var fired = from step in steps
                    where step.Frames > 0
                    from light in exposures.First(exposure => exposure.SetUp == step.SetUp && exposure.Framing.Name == step.Framing).Lights
                    group (step.Frames, FlashEnergy.ShareOfCells(light.Power)) by light.Flash;
        return [.. fired.Select(of => UseOf(kit, kit.Flashes.First(flash => flash.Name == of.Key), [.. of]))];
    }

    private static FlashUse UseOf(KitSpec kit, FlashSpec flash, IReadOnlyList<(int Frames, double Share)> fired)
    {
        var frames = fired.Sum(step => step.Frames);
        var meanShare = Math.Min(1, fired.Sum(step => step.Frames * step.Share) / frames);
        var sets = 1 + flash.SpareSets;
        var budget = FlashBudget.For(frames * kit.Session.Rounds, meanShare, flash.FullPowerFlashes, sets);
        return new FlashUse
        {
            Flash = flash.Name,
            Flashes = frames * kit.Session.Rounds,
            FullPowerFlashes = budget.FullPowerFlashes,
            SetsNeeded = budget.SetsNeeded,
            SetsCarried = sets,
            CellsPerSet = flash.Cell is null ? 0 : flash.CellCount,
            FlashesCarried = budget.FlashesCarried,
            Enough = budget.Enough,
        };
    }

    private static IEnumerable<string> Notes(KitSpec kit, IReadOnlyList<ExposurePlan> exposures, bool proven)
    {
        if (!proven)
        {
            yield return FormattableString.Invariant($"With more than {SessionOrder.MostGroups} subjects alike, or very many set-ups, the order is a good one, but a better one may exist.");
        }

        foreach (var subject in kit.Subjects)
        {
            var without = kit.SetUps.Where(setUp => (setUp.Subjects.Count == 0 || setUp.Subjects.Contains(subject.Name)) && Largest(setUp, subject, exposures) is null).Select(setUp => setUp.Name).ToList();
            if (without.Count > 0)
            {
                yield return $"Left out, as no framing that works shows it whole: {subject.Name} in {string.Join(", ", without)}.";
            }
        }

        yield return "Times are the kit's ('session:'); time one round with the test object alone and put your own in.";
    }
}
