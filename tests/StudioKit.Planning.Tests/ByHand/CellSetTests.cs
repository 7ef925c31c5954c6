using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>The set of cells in the flash is carried too: with n spare sets there are n + 1.</summary>
public sealed class CellSetTests
{
    private const string Sections =
        """
        subjects:
          - {name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 0 m/s}
        session: {frame-time: 2 s, test-frames: 4, frames: 26, rounds: ROUNDS}

        """;

    private const string Cell = "flashes-per-set: 100, cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4";

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void With_so_many_spare_sets_one_more_is_carried(int spare)
    {
        var plan = PlanOf(spare, rounds: 1);

        plan.Session!.Flashes.Single(use => use.Flash == "one").SetsCarried.Should().Be(spare + 1);
        var stock = plan.Pack.Cells.Single();
        (stock.Count, stock.Spare, stock.FullPowerFlashes).Should().Be((4 * (spare + 1), 4 * spare, 80 * (spare + 1)));
        plan.Pack.Items.Where(item => item.CellsOf == "one").Sum(item => item.Mass.Grams).Should().BeApproximately(27 * 4 * (spare + 1), 1e-9);
    }

    // A set gives 100 flashes at full power, 100/P at power P, and a fifth of it stays in reserve (common practice). The card counts as the session does.
    [Fact]
    public void The_flashes_carried_are_those_of_all_sets()
    {
        var (none, one) = (PlanOf(0, rounds: 1), PlanOf(1, rounds: 1));
        var power = none.Exposures.Single().Lights.Single(light => light.Flash == "one").Power.Fraction;

        none.Session!.Flashes.Single(use => use.Flash == "one").FlashesCarried.Should().Be((int)Math.Floor(80 / power));
        one.Session!.Flashes.Single(use => use.Flash == "one").FlashesCarried.Should().Be((int)Math.Floor(160 / power));
        Card(none).Should().Be((int)Math.Floor(80 / power));
        Card(one).Should().Be(2 * Card(none));
    }

    // The faster the sensor, the less power the flash below gives. Under 1/16 standing by drains as much as 1/16 would (from memory): 80·16 = 1280 flashes of one
    // set, by the card and by the session alike. 4 frames of the test object and 26 a round last 49 rounds, which take 1278; by the bare power they would seem to last at least 51.
    [Theory]
    [InlineData(49, true)]
    [InlineData(50, false)]
    public void Card_and_session_count_alike_and_little_power_does_not_stretch_a_set_for_ever(int rounds, bool enough)
    {
        var plan = HandKit.Plan(
            Sections.Replace("ROUNDS", FormattableString.Invariant($"{rounds}"), StringComparison.Ordinal) + HandKit.White.Replace("iso: 400", "iso: 6400", StringComparison.Ordinal),
            one: $"{Cell}, spare-sets: 0", panel: "width: 400 mm, depth: 400 mm");

        var use = plan.Session!.Flashes.Single(use => use.Flash == "one");
        plan.Exposures.Single().Lights.Single(light => light.Flash == "one").Power.Fraction.Should().BeLessThan(80.0 / (4 + (51 * 26)));
        Card(plan).Should().Be(1280);
        use.FlashesCarried.Should().Be(1280);
        use.Enough.Should().Be(enough);
    }

    // 4 frames of the test object and 26 a round. At power P a set lasts (80/P − 4)/26 rounds: as many are enough, one more is not.
    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void The_set_in_the_flash_alone_is_enough_for_as_many_rounds_as_it_lasts(int more, bool enough)
    {
        var power = PlanOf(0, rounds: 1).Exposures.Single().Lights.Single(light => light.Flash == "one").Power.Fraction;
        var lasts = (int)Math.Floor(((80 / power) - 4) / 26);

        var plan = PlanOf(0, lasts + more);

        plan.Session!.Flashes.Single(use => use.Flash == "one").Enough.Should().Be(enough);
        plan.Checks.Single(check => check.Kind == PlanCheckKind.Cells && check.Parts.SequenceEqual(["one"])).Passed.Should().Be(enough);
    }

    // Four cells of 2 Ah at 1.2 V hold 34 560 J; half of it reaches the capacitor (from memory): 227 flashes of 76 J, 909 of 19 J.
    [Theory]
    [InlineData(76, 227)]
    [InlineData(19, 909)]
    public void Where_nobody_counted_them_the_flashes_of_a_set_follow_from_its_energy(int joules, int flashes)
    {
        var plan = HandKit.Plan(
            Sections.Replace("ROUNDS", "1", StringComparison.Ordinal) + HandKit.White,
            one: Cell.Replace("flashes-per-set: 100", FormattableString.Invariant($"energy: {joules} J"), StringComparison.Ordinal) + ", spare-sets: 1");
        var power = plan.Exposures.Single().Lights.Single(light => light.Flash == "one").Power.Fraction;

        plan.Pack.Cells.Single().FullPowerFlashes.Should().Be((int)Math.Floor(0.8 * 2 * flashes));
        Card(plan).Should().Be((int)Math.Floor(0.8 * 2 * flashes / power));
        plan.Session!.Flashes.Single(use => use.Flash == "one").FlashesCarried.Should().Be((int)Math.Floor(0.8 * 2 * flashes / power));
    }

    [Fact]
    public void A_count_of_flashes_goes_before_the_energy_of_one()
    {
        var plan = HandKit.Plan(Sections.Replace("ROUNDS", "1", StringComparison.Ordinal) + HandKit.White, one: Cell + ", energy: 76 J, spare-sets: 0");

        plan.Pack.Cells.Single().FullPowerFlashes.Should().Be(80);
    }

    private static int Card(Plan plan) => plan.Exposures.Single().Lights.Single(light => light.Flash == "one").FlashesCarried;

    private static Plan PlanOf(int spare, int rounds) => HandKit.Plan(
        Sections.Replace("ROUNDS", FormattableString.Invariant($"{rounds}"), StringComparison.Ordinal) + HandKit.White,
        one: FormattableString.Invariant($"{Cell}, spare-sets: {spare}"));
}
