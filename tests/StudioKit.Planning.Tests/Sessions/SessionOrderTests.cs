using StudioKit.Kits.Subjects;
using StudioKit.Planning.Session;
using UnitsNet;


namespace StudioKit.Planning.Tests.Sessions;

/// <summary>The order against every order there is.</summary>
public sealed class SessionOrderTests
{
    private static readonly IReadOnlyList<ExposurePlan> Exposures = KitText.Demo("fen-edge.yaml").Exposures;

    // Two ranks of up to three and two subjects, each in up to three of six places.
    private static readonly Gen<int[][]> Subjects = Gen.Int[0, 5].HashSet[1, 3].Select(set => set.ToArray()).Array[5];

    [Fact]
    public void No_other_order_in_keeping_with_the_ranks_changes_less() => Subjects.Sample(
        places =>
        {
            var visits = places.Select((own, i) => Visits(FormattableString.Invariant($"animal {i}"), own)).ToList();
            IReadOnlyList<IReadOnlyList<IReadOnlyList<SessionVisit>>> ranks = [visits[..3], visits[3..]];

            var (route, proven) = SessionOrder.Of(ranks);

            var least = EveryOrder(ranks).Min(Cost);
            return proven && Cost(route.Visits) == least && route.Changes * 1000 + route.Reframings == least;
        },
        iter: 12);

    [Fact]
    public void Many_subjects_alike_are_ordered_well_and_said_to_be_unproven()
    {
        IReadOnlyList<IReadOnlyList<SessionVisit>> rank = [.. Enumerable.Range(0, 14).Select(i => Visits(FormattableString.Invariant($"animal {i}"), [i % 3 == 0 ? 0 : 5]))];

        var (route, proven) = SessionOrder.Of([rank]);

        proven.Should().BeFalse();
        route.Visits.Should().HaveCount(14);
        route.Changes.Should().BeLessThanOrEqualTo(1);
    }

    [Fact]
    public void Without_subjects_there_is_no_route() => SessionOrder.Of([]).Route.Visits.Should().BeEmpty();

    // Places of one set-up differ in framing, those of others in set-up.
    private static IReadOnlyList<SessionVisit> Visits(string name, int[] places)
    {
        var subject = new SubjectSpec { Name = name, Group = SubjectGroup.FlyingInsects, Length = Length.FromMillimeters(20) };
        return [.. places.Select(place => new SessionVisit(
            subject,
            Exposures[0] with { SetUp = $"set-up {place / 2}", Framing = Exposures[0].Framing with { Name = $"framing {place % 2}" } },
            Held: true))];
    }

    private static int Cost(IReadOnlyList<SessionVisit> visits) => visits.Zip(visits.Skip(1))
        .Sum(pair => pair.First.Exposure.SetUp != pair.Second.Exposure.SetUp ? 1000 : pair.First.Place != pair.Second.Place ? 1 : 0);

    private static IEnumerable<IReadOnlyList<SessionVisit>> EveryOrder(IReadOnlyList<IReadOnlyList<IReadOnlyList<SessionVisit>>> ranks) =>
        ranks.Aggregate<IReadOnlyList<IReadOnlyList<SessionVisit>>, IEnumerable<IReadOnlyList<SessionVisit>>>(
            [[]], (soFar, rank) => soFar.SelectMany(before => Permutations(rank).SelectMany(order => InEach(order).Select(own => (IReadOnlyList<SessionVisit>)[.. before, .. own]))));

    private static IEnumerable<IReadOnlyList<SessionVisit>> InEach(IReadOnlyList<IReadOnlyList<SessionVisit>> subjects) =>
        subjects.Aggregate<IReadOnlyList<SessionVisit>, IEnumerable<IReadOnlyList<SessionVisit>>>(
            [[]], (soFar, visits) => soFar.SelectMany(before => Permutations(visits)
                .Select(order => (IReadOnlyList<SessionVisit>)[.. before, .. order])));

    private static IEnumerable<IReadOnlyList<T>> Permutations<T>(IReadOnlyList<T> items) => items.Count == 0
        ? [[]]
        : items.SelectMany((item, i) => Permutations<T>([.. items.Where((_, j) => j != i)]).Select(rest => (IReadOnlyList<T>)[item, .. rest]));
}
