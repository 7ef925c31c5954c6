using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Session;

namespace StudioKit.Planning.Tests.Sessions;

/// <summary>Which set-ups are photographed in one light, against every way of putting them together.</summary>
public sealed class LightGroupsTests
{
    private const int Day = 24 * 60;

    // Up to six set-ups with lights, windows and hours that meet now and then.
    private static readonly Gen<SetUpWindow[]> Any =
        (from planned in Gen.Int[4, 14]
         from darker in Gen.Int[0, 4]
         from brighter in Gen.Int[0, 4]
         from hours in Gen.Frequency(
             (2, Gen.Const((ClockRange?)null)),
             (1, Gen.Select(Gen.Int[0, 23], Gen.Int[1, 23]).Select(pair => (ClockRange?)new ClockRange(60 * pair.Item1, 60 * ((pair.Item1 + pair.Item2) % 24)))))
         select Window(planned, planned - darker, planned + brighter, hours)).Array[1, 6]
        .Select(windows => windows.Select((window, place) => window with { SetUp = FormattableString.Invariant($"set-up {place}") }).ToArray());

    [Fact]
    public void Every_set_up_of_a_block_works_in_the_light_that_the_others_are_planned_for() => Any.Sample(windows =>
        LightGroups.Of(windows).Groups.All(group => group.SetUps.All(one => group.SetUps.All(other =>
            one.Planned.AtIso100 >= other.Light.Darkest.AtIso100 && one.Planned.AtIso100 <= other.Light.Brightest.AtIso100))));

    [Fact]
    public void Every_set_up_of_a_block_allows_its_light_and_its_hours() => Any.Sample(windows =>
        LightGroups.Of(windows).Groups.All(group =>
            group.SetUps.All(one => one.Light.Holds(group.Light.Darkest) && one.Light.Holds(group.Light.Brightest) && one.Light.Holds(group.Planned.Darkest))
            && Minutes(group.Clock).All(minute => group.SetUps.All(one => Minutes(one.Clock).Contains(minute)))
            && Minutes(group.Clock).Count > 0));

    [Fact]
    public void Each_set_up_stands_in_one_block_and_no_fewer_blocks_would_do() => Any.Sample(
        windows =>
        {
            var (groups, proven) = LightGroups.Of(windows);

            return proven
                && groups.SelectMany(group => group.SetUps).Order(Comparer<SetUpWindow>.Create((a, b) => string.CompareOrdinal(a.SetUp, b.SetUp))).SequenceEqual(windows)
                && groups.Count == Partitions([.. windows]).Where(partition => partition.All(MayStandTogether)).Min(partition => partition.Count);
        },
        iter: 60);

    [Fact]
    public void Very_many_set_ups_are_put_together_soundly_and_said_to_be_unproven()
    {
        SetUpWindow[] windows = [.. Enumerable.Range(0, 14).Select(i => Window(4 + (i % 7), 3 + (i % 7), 5 + (i % 7), null) with { SetUp = FormattableString.Invariant($"set-up {i}") })];

        var (groups, proven) = LightGroups.Of(windows);

        proven.Should().BeFalse();
        groups.SelectMany(group => group.SetUps).Should().BeEquivalentTo(windows);
        groups.Should().OnlyContain(group => MayStandTogether(group.SetUps.ToList()));
    }

    // Habitat in thin cloud, a moth under an umbrella and a frog at last light: three lights, and one set-up that bears two of them.
    [Fact]
    public void Of_two_ways_with_as_many_blocks_the_more_alike_lights_are_put_together()
    {
        SetUpWindow[] windows = [Window(14, 12, 16, null) with { SetUp = "a" }, Window(10, 8, 14, null) with { SetUp = "b" }, Window(9, 6, 11, null) with { SetUp = "c" }];

        LightGroups.Of(windows).Groups.Select(group => string.Concat(group.SetUps.Select(one => one.SetUp))).Should().BeEquivalentTo("a", "bc");
    }

    [Theory]
    [InlineData(21 * 60, 2 * 60, 23 * 60, true)]
    [InlineData(21 * 60, 2 * 60, 60, true)]
    [InlineData(21 * 60, 2 * 60, 2 * 60, false)]
    [InlineData(21 * 60, 2 * 60, 12 * 60, false)]
    [InlineData(9 * 60, 17 * 60, 9 * 60, true)]
    [InlineData(9 * 60, 17 * 60, 17 * 60, false)]
    public void Hours_may_run_past_midnight(int from, int to, int minute, bool inside) => new ClockRange(from, to).Holds(minute).Should().Be(inside);

    [Fact]
    public void The_day_goes_from_bright_to_dark_and_by_the_clock_where_there_is_one()
    {
        IReadOnlyList<LightGroup> groups = [Group("dusk", 8, null), Group("early", 6, new ClockRange(300, 360)), Group("noon", 14, null), Group("late", 12, new ClockRange(1260, 1320))];

        BlockOrder.Of(groups).Select(group => group.SetUps[0].SetUp).Should().Equal("noon", "early", "dusk", "late");
    }

    private static LightGroup Group(string name, double light, ClockRange? hours) => LightGroup.Of([Window(light, light, light, hours) with { SetUp = name }])!;

    private static SetUpWindow Window(double planned, double darkest, double brightest, ClockRange? hours)
    {
        var light = new LightRange(new ExposureValue(darkest), new ExposureValue(brightest));
        return new SetUpWindow { SetUp = "", Planned = new ExposureValue(planned), Works = light, Light = light, Clock = hours };
    }

    // By hand: every pair bears the other's light, and some minute of the day lies in the hours of all.
    private static bool MayStandTogether(IReadOnlyList<SetUpWindow> group) =>
        group.All(one => group.All(other => other.Light.Holds(one.Planned)))
        && Enumerable.Range(0, Day).Any(minute => group.All(one => one.Clock is null || Minutes(one.Clock).Contains(minute)));

    private static HashSet<int> Minutes(ClockRange? hours) => hours is null
        ? [.. Enumerable.Range(0, Day)]
        : [.. Enumerable.Range(hours.From, hours.To > hours.From ? hours.To - hours.From : hours.To + Day - hours.From).Select(minute => minute % Day)];

    private static IEnumerable<List<List<SetUpWindow>>> Partitions(List<SetUpWindow> windows)
    {
        if (windows.Count == 0)
        {
            return [[]];
        }

        return Partitions(windows[1..]).SelectMany(rest => Enumerable.Range(0, rest.Count)
            .Select(place => rest.Select((part, i) => i == place ? [windows[0], .. part] : part.ToList()).ToList())
            .Append([[windows[0]], .. rest]));
    }
}
