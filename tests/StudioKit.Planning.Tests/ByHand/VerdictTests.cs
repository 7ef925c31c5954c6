using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A limit missed by no more than the plan is unsure of leaves a picture of use; one missed by more does not.</summary>
public sealed class VerdictTests
{
    private const string Black =
        """
        set-ups:
          - {name: black, kind: dark-background, aperture: f/16, shutter: 1/200 s, iso: 100, background-distance: 5 m, lights: [{flash: one, role: key, distance: DISTANCE}]}

        """;

    // Right exposure takes 250·24²/100 = 1440 lx·s at f/24 and ISO 100; a flash of GN 32 that goes down to 1/2 only gives 1280/d²: at 94 cm right, 0.3 stop
    // more than that at 85 cm (2·log₂(94.3/85)), 2.2 at 44 cm. The plan is unsure by about half a stop.
    [Theory]
    [InlineData("100 cm", Verdict.Works)]
    [InlineData("85 cm", Verdict.AtTheEdge)]
    [InlineData("44 cm", Verdict.DoesNotWork)]
    public void A_lowest_power_that_is_a_little_too_much_is_at_the_edge(string distance, Verdict verdict)
    {
        var exposure = HandKit.Plan(Black.Replace("DISTANCE", distance, StringComparison.Ordinal), one: "lowest-power: 1/2").Exposures.Single();

        exposure.Verdict.Verdict.Should().Be(verdict);
        exposure.IsUsable.Should().Be(verdict != Verdict.DoesNotWork);
        if (verdict != Verdict.Works)
        {
            var by = exposure.Verdict.Missed.Max(limit => limit.By!.Value.Value);
            (by <= exposure.Uncertainty.Value).Should().Be(verdict == Verdict.AtTheEdge);
        }
    }

    // Level of the key on a background b behind: −2·log₂((50 + b)/50) stops. −3.61 at 125 cm, −2.0 at 50 cm; four stops are asked.
    [Theory]
    [InlineData("1.7 m", Verdict.Works)]
    [InlineData("1.25 m", Verdict.AtTheEdge)]
    [InlineData("0.5 m", Verdict.DoesNotWork)]
    public void A_background_not_quite_black_enough_is_at_the_edge(string background, Verdict verdict)
    {
        var exposure = HandKit.Plan(Black.Replace("DISTANCE", "50 cm", StringComparison.Ordinal)
            .Replace("background-distance: 5 m", $"background-distance: {background}, ambient-under: 4 stops", StringComparison.Ordinal)).Exposures.Single();

        exposure.Verdict.Verdict.Should().Be(verdict);
        exposure.Verdict.BackgroundShows.Should().BeInRange(verdict == Verdict.DoesNotWork ? 0.5 : 0, verdict == Verdict.DoesNotWork ? 1 : 0.5);
        exposure.Verdict.Missed.OfType<MissedLimit.LightsBackground>().Should().HaveCount(verdict == Verdict.Works ? 0 : 1);
    }

    private const string Tripod = "supports: [{name: tripod, kind: tripod, sway: 0 mm/s}]\n";

    // m·v·t = 1 · 5 mm/s · 1/30 s = 156 µm where 28.8 µm pass: two and a half stops too long, however the shutter was chosen.
    [Fact]
    public void A_typed_shutter_that_the_hand_smears_does_not_work_and_what_would_is_planned()
    {
        var plan = KitText.Plan(HandKit.Of(
            Tripod + "set-ups: [{name: dusk, kind: low-light-fill, aperture: f/8, shutter: 1/30 s, ambient: EV 8, camera-pitch: 15°, fill-level: -1 stop, lights: [{flash: one, role: fill, distance: 2 m}]}]\n")
            .Replace("hand-speed: 0 m/s", "hand-speed: 5 mm/s", StringComparison.Ordinal)
            .Replace("magnifications: [1:2]", "magnifications: [1:1]", StringComparison.Ordinal));
        var exposure = plan.Exposures.Single();

        exposure.Shutter.Nominal.Should().Be("1/30 s");
        exposure.Verdict.Verdict.Should().Be(Verdict.DoesNotWork);
        exposure.Verdict.Missed.Should().Contain(limit => limit is MissedLimit.Smears);
        exposure.Sharpness.FinestDetail.Should().BeGreaterThan(exposure.Sharpness.StillDetail * 3);
        var mending = plan.Advice.Of(exposure).Mending;
        mending.Should().Contain(change => change.Changes.OfType<Changes.KitChange.Rest>().Any(), "a tripod is in the bag");
        mending.Should().OnlyContain(change => change.Promise.Verdict.Verdict < Verdict.DoesNotWork && change.Promise.SmearPixels < exposure.Sharpness.SmearPixels / 2);
    }

    // At its lowest power the flash is too strong from so near, and the hand smears: neither a shorter time nor a step back is enough alone.
    [Fact]
    public void What_misses_two_limits_at_once_is_mended_by_two_changes_together()
    {
        var plan = KitText.Plan(HandKit.Of(
            Tripod + "set-ups: [{name: dusk, kind: low-light-fill, aperture: f/8, shutter: 1/30 s, ambient: EV 8, camera-pitch: 15°, fill-level: -2 stops, lights: [{flash: one, role: fill, distance: 80 cm}]}]\n")
            .Replace("hand-speed: 0 m/s", "hand-speed: 5 mm/s", StringComparison.Ordinal)
            .Replace("magnifications: [1:2]", "magnifications: [1:1]", StringComparison.Ordinal));
        var exposure = plan.Exposures.Single();

        exposure.Verdict.Missed.Select(limit => limit.GetType()).Should().Contain([typeof(MissedLimit.Smears), typeof(MissedLimit.FlashTooStrong)]);
        plan.Advice.Of(exposure).Mending.Should().Contain(change => change.Changes.Count > 1 && change.Changes.OfType<Changes.KitChange.Move>().Any()
            && change.Promise.IsUsable);
    }
}
