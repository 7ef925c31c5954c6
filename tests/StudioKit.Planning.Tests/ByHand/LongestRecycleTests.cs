namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A flash that may take only so long to recharge is kept to the power that recharges as soon: time over full-power time.</summary>
/// <remarks>A quenched flash spends, and replaces, its share of the charge.</remarks>
public sealed class LongestRecycleTests
{
    private static readonly string FreeIso = HandKit.White.Replace("    iso: 400\n", "", StringComparison.Ordinal);

    // 40 s for a full-power flash: within 1 s it gives a fortieth of its light, 1/40, a third-stop mark at or under that.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Sensitivity_makes_up_for_the_power_that_there_is_no_time_for(int seconds)
    {
        var (free, held) = (Only(FreeIso), Only(Within(seconds) + FreeIso));

        free.Lights[0].RecycleTime.Seconds.Should().BeGreaterThan(seconds, "the example must show the case that it stands for");
        held.Lights[0].Power.Fraction.Should().BeLessThanOrEqualTo((seconds / 40.0) + 1e-9);
        held.Lights[0].RecycleTime.Seconds.Should().BeLessThanOrEqualTo(seconds + 1e-9);
        held.Verdict.Missed.Should().BeEmpty();
        Math.Log2(held.Iso.Value / free.Iso.Value).Should().BeApproximately(
            Math.Log2(free.Lights[0].Power.Fraction / held.Lights[0].Power.Fraction), 1e-6);
    }

    /// <summary>The first below recharges in no time; the one beside it takes 40 s at full power and fires at the same power: 2 s of that is a twentieth.</summary>
    [Fact]
    public void A_flash_that_fires_along_is_waited_for_too()
    {
        var beside = FreeIso.Replace(
            "- {flash: one, role: below, distance: 45 cm}", "- {flash: two, role: below, distance: 45 cm}\n      - {flash: one, role: below, distance: 45 cm}", StringComparison.Ordinal);
        var (free, held) = (Only(beside), Only(Within(2) + beside));

        free.Lights.Single(light => light.Flash == "one").RecycleTime.Seconds.Should().BeGreaterThan(2, "the example must show the case that it stands for");
        held.IsUsable.Should().BeTrue();
        held.Lights.Single(light => light.Flash == "one").RecycleTime.Seconds.Should().BeLessThanOrEqualTo(2 + 1e-9);
        held.Lights.Where(light => light.Role == Kits.SetUps.LightRole.Below).Should().OnlyContain(light => light.Power.Fraction <= (2 / 40.0) + 1e-9);
    }

    [Fact]
    public void A_wait_that_no_flash_needs_changes_nothing()
    {
        var (free, held) = (Only(FreeIso), Only(Within(40) + FreeIso));

        (held.Iso, held.Lights[0].Power, held.Lights[1].Power).Should().Be((free.Iso, free.Lights[0].Power, free.Lights[1].Power));
    }

    private static string Within(int seconds) => FormattableString.Invariant($"session: {{longest-recycle: {seconds} s}}\n");

    private static ExposurePlan Only(string sections) =>
        HandKit.Plan(sections, one: "recycle-time: 40 s", two: "lowest-power: 1/1024", panel: "width: 400 mm, depth: 400 mm").Exposures.Single();
}
