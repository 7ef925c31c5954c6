using StudioKit.Kits.Cameras;
using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.SetUps.WhiteBackground;
using StudioKit.Planning.Standing;

namespace StudioKit.Planning.Advising;

/// <summary>Works out the advice for one exposure.</summary>
internal sealed class CardAdviser(Replanner replanner, ExposurePlan now, IReadOnlyList<ExposurePlan> all, Lazy<StandSearch> stands)
{
    // The nearest that is clear does it, unless something else of the exposure suffers.
    private const int TurnsTried = 2;

    /// <summary>All of it.</summary>
    public CardAdvice Advise() => new()
    {
        Symptoms = now.IsUsable ? [.. Rules().Select(Of).Where(Helps)] : [],
        WhenLightChanges = [.. WhenLightChanges()],
        Distances = now.IsUsable ? [.. new DistanceTable(replanner, now).OfAll()] : [],
        Mending = [.. Mending()],
    };

    /// <summary>What helps against one symptom; none where there is no advice against it.</summary>
    public SymptomAdvice? Against(Symptom seen) => now.IsUsable ? Rules().Where(rule => rule.Seen == seen).Select(Of).FirstOrDefault(Helps) : null;

    /// <summary>What to set when the light changes; nothing where the exposure does not work.</summary>
    public IReadOnlyList<LightStep> WhenLightChanges() => now.IsUsable ? new LightTable(replanner, now).Steps() : [];

    /// <summary>Changes that make it work.</summary>
    public IReadOnlyList<Advice> Mending() => now.Verdict.Verdict == Verdict.Works ? [] : new MendingLadders(replanner, now).Cheapest();

    private IEnumerable<SymptomRule> Rules()
    {
        var setUp = replanner.SetUpOf(now);
        var polarisers = replanner.Kit.Accessories.Filters.Where(filter => filter.Kind == FilterKind.Polariser).Select(filter => filter.Name);
        return SetUpPlanners.Of(setUp).Symptoms(setUp, now)
            .Concat(EdgeSymptoms.Of(setUp, replanner.Kit.UprightOf(setUp), now, changes => replanner.UprightNeeded(setUp, changes)))
            .Concat(CommonSymptoms.FrameMissing(setUp, now))
            .Append(CommonSymptoms.Smeared(replanner.Kit, setUp, now))
            .Concat(CommonSymptoms.Shine(setUp, now, polarisers))
            .Concat(CommonSymptoms.LensShadow(now, all, Turned));
    }

    private IEnumerable<KitChange> Turned(LightPlan hidden) => stands.Value.Directions(now.SetUp, hidden.Place)
        .Where(to => replanner.HiddenFrom(now, hidden.Place, to).Value <= hidden.LensLoss.Value / 2).Take(TurnsTried).Select(to => new KitChange.Turn(now.SetUp, hidden.Place, to));

    private SymptomAdvice Of(SymptomRule rule) => new(rule.Seen, First(rule) ?? (rule.Instead is { } other ? new Advice([], other) : null))
    {
        Room = rule.Room,
        Wait = rule.Wait,
        TurnsPolariser = rule.TurnsPolariser,
    };

    private Advice? First(SymptomRule rule) => rule.Ladder
        .Select(changes => (Changes: changes, Promise: replanner.Plan(now, changes)))
        .Where(tried => tried.Promise is { } promise && IsNoWorse(promise) && Turns(tried.Changes, promise) && rule.Mends(promise))
        .Select(tried => new Advice(tried.Changes, tried.Promise!))
        .FirstOrDefault();

    // A change that leaves every setting as it was, and that nobody makes with their hands, is no advice.
    private bool Turns(ValueList<KitChange> changes, ExposurePlan promise) => changes.Any(change => change.IsDoneByHand) || !now.IsSetLike(promise);

    // What mends one thing must not break another.
    private bool IsNoWorse(ExposurePlan promise) => promise.Verdict.Verdict <= now.Verdict.Verdict;

    // Where neither a turn nor a limit can be told, there is nothing to say.
    private static bool Helps(SymptomAdvice symptom) => symptom.Advice is not null || symptom.TurnsPolariser || symptom.Room is not null || symptom.Wait is not null;
}
