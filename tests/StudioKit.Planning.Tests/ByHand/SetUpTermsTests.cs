using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Each key of kit and set-up counts for what it says, stop by stop; a click of the dial is a third.</summary>
public sealed class SetUpTermsTests
{
    private const string Black =
        """
        set-ups:
          - {name: black, kind: dark-background, aperture: f/16, shutter: 1/200 s, iso: 400, background-distance: 5 m, MORE lights: [{flash: one, role: key, distance: 50 cm KEY}, {flash: two, role: rim, distance: 60 cm}]}

        """;

    // A camera that clips a stop later needs a stop more under the sheet, and nothing more on the subject.
    [Fact]
    public void A_higher_clip_point_asks_for_as_much_more_light_under_the_sheet()
    {
        var (usual, late) = (Only(HandKit.Of(HandKit.White, panel: "width: 400 mm, depth: 400 mm")), Only(HandKit.Of(HandKit.White, camera: "clip-point: 1 stop", panel: "width: 400 mm, depth: 400 mm")));

        StopsBetween(usual, late, 0).Should().BeApproximately(1, 1e-9);
        StopsBetween(usual, late, 1).Should().BeApproximately(0, 1e-9);
    }

    [Fact]
    public void A_target_of_a_stop_is_met_by_less_than_a_click_more()
    {
        var exposure = Only(HandKit.Of(HandKit.White + "    target-white-margin: 1 stop\n", panel: "width: 400 mm, depth: 400 mm"));

        exposure.WhiteMargin!.Value.Value.Should().BeInRange(1 - 1e-6, (4.0 / 3) - 1e-6);
    }

    // Guide numbers lose a stop outdoors: a stop more power for every flash.
    [Fact]
    public void What_guide_numbers_lose_outdoors_every_flash_makes_up_for()
    {
        var indoors = Only(Dark());
        var outdoors = Only(Dark().Replace("outdoor-correction: 0 stops", "outdoor-correction: -1 stop", StringComparison.Ordinal));

        StopsBetween(indoors, outdoors, 0).Should().BeApproximately(1, 1e-9);
        StopsBetween(indoors, outdoors, 1).Should().BeApproximately(1, 1e-9);
    }

    [Fact]
    public void What_a_modifier_swallows_its_flash_makes_up_for()
    {
        const string Dome = "modifiers: [{name: dome, kind: dome, size: 10 mm x 10 mm, loss: 2 stops}]\n";

        var bare = Only(Dark(Dome));
        var soft = Only(Dark(Dome, key: ", modifier: dome"));

        StopsBetween(bare, soft, 0).Should().BeApproximately(2, 1e-9);
        StopsBetween(bare, soft, 1).Should().BeApproximately(0, 1e-9);
    }

    // A front of 1 m × 1 m at half a metre lights the subject by 0.554 of what a point would (rectangle to parallel element, Howell: at x = y = 1
    // F = 4/(2π)·2·atan(1/√2)/√2 = 0.554, against x·y·4/π for a point): 0.554·π/4 = 0.435, −1.20 stops.
    [Fact]
    public void The_front_of_the_modifier_is_the_head_that_stands_close_by()
    {
        var soft = Only(Dark("modifiers: [{name: large, kind: softbox, size: 1 m x 1 m, loss: 1 stop}]\n", key: ", modifier: large"));

        soft.Lights[0].Budget.Lines.Single(line => line.Item == "Head close by").Stops.Value.Should().BeApproximately(-1.20, 0.005);
    }

    [Fact]
    public void A_filter_takes_its_stops_from_flash_and_daylight_alike()
    {
        const string Filters = "accessories: {filters: [{name: polariser, kind: polariser, loss: 2 stops}]}\n";

        var bare = Only(Dark(Filters));
        var filtered = Only(Dark(Filters, more: "filter: polariser,"));

        StopsBetween(bare, filtered, 0).Should().BeApproximately(2, 1e-9);
        (bare.AmbientLevel - filtered.AmbientLevel).Value.Should().BeApproximately(2, 1e-9);
    }

    // Rounded to the nearest third, so a sixth of a stop either way.
    [Theory]
    [InlineData("0 stops", 0)]
    [InlineData("-1 stop", -1)]
    [InlineData("+1 stop", 1)]
    public void The_rim_lies_by_its_level_beside_the_key(string level, double stops)
    {
        var exposure = Only(Dark(more: $"rim-level: {level},"));

        exposure.Lights.Single(light => light.Role == LightRole.Rim).Budget.Total.Value.Should().BeApproximately(stops, (1.0 / 6) + 1e-6);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    public void A_dark_background_lies_under_its_metered_exposure_by_what_is_asked(int under)
    {
        var exposure = Only(Dark(more: FormattableString.Invariant($"ambient: EV 10, iso: 6400, ambient-under: {under} stops,"), iso: ""));

        exposure.AmbientLevel.Value.Should().BeInRange(-under - 1.0 / 3, -under + 1e-9);
    }

    // Inverse square: what lights the subject from 50 cm lights a background b behind it by ((50 cm + b)/50 cm)² less, four stops at b = 150 cm;
    // a quarter of a stop is let pass.
    [Theory]
    [InlineData("1.2 m", false)]
    [InlineData("1.6 m", true)]
    public void A_background_must_lie_four_times_as_far_from_the_key_as_the_subject(string distance, bool works)
    {
        var exposure = HandKitPlan(Dark().Replace("background-distance: 5 m", $"background-distance: {distance}", StringComparison.Ordinal));

        (exposure.Verdict.Verdict == Verdict.Works).Should().Be(works);
    }

    // Smear within 1/1500 of the diagonal, 43.27/1500 = 28.8 µm: at half life size and 600 mm/s no flash may burn longer than 96 µs.
    [Theory]
    [InlineData("600 mm/s", "0 m/s")]
    [InlineData("0 mm/s", "0.6 m/s")]
    public void No_flash_burns_longer_than_subject_and_hand_hold_still(string subject, string hand)
    {
        var text = Dark($"subjects: [{{name: crane fly, group: flying-insects, length: 30 mm, speed: {subject}}}]\n")
            .Replace("hand-speed: 0 m/s", $"hand-speed: {hand}", StringComparison.Ordinal).Replace("iso: 400", "iso: 100", StringComparison.Ordinal);

        Only(text).Lights.Should().OnlyContain(light => light.FlashDuration.Microseconds < 96.5);
    }

    // Veil g·2^margin of saturation on a mid-tone 2.97 stops under it: log₂(1 + g·2^margin·2^2.97) ≤ limit. g = 0.02: limit 0.7 gives
    // log₂(0.6245/0.1567) = 1.99, limit 0.3 log₂(0.2311/0.1567) = 0.56; g = 0.05: 0.67.
    [Theory]
    [InlineData("0.7", "0.02", 1.99)]
    [InlineData("0.3", "0.02", 0.56)]
    [InlineData("0.7", "0.05", 0.67)]
    public void The_brightest_point_is_bound_by_the_veil_that_is_accepted(string limit, string glare, double highest)
    {
        var exposure = HandKitPlan(HandKit.Of(HandKit.White + $"    veil-limit: {limit} stops\n", camera: $"veiling-glare: {glare}", panel: "width: 400 mm, depth: 400 mm"));

        exposure.HighestMargin!.Value.Value.Should().BeApproximately(highest, 0.01);
    }

    // Flashes below fire alike; one that goes down to a quarter only stays there where an eighth is asked for.
    [Fact]
    public void A_second_flash_below_goes_no_lower_than_it_can()
    {
        var text = HandKit.White.Replace(
            "- {flash: one, role: below, distance: 45 cm}", "- {flash: two, role: below, distance: 45 cm}\n      - {flash: one, role: below, distance: 45 cm}", StringComparison.Ordinal);
        var exposure = Only(HandKit.Of(text, one: "lowest-power: 1/4", panel: "width: 400 mm, depth: 400 mm"));

        exposure.Lights[0].Power.Fraction.Should().BeLessThan(0.2);
        exposure.Lights.Single(light => light.Flash == "one").Power.Fraction.Should().BeApproximately(0.25, 1e-9);
    }

    private static string Dark(string sections = "", string more = "", string key = "", string? iso = null) => HandKit.Of(
        sections + Black.Replace("MORE", more, StringComparison.Ordinal).Replace(" KEY", key, StringComparison.Ordinal)
            .Replace("iso: 400, ", iso ?? "iso: 400, ", StringComparison.Ordinal));

    private static double StopsBetween(ExposurePlan less, ExposurePlan more, int light)
    {
        more.Iso.Should().Be(less.Iso);
        return Math.Log2(more.Lights[light].Power.Fraction / less.Lights[light].Power.Fraction);
    }

    private static ExposurePlan HandKitPlan(string text) => KitText.Plan(text).Exposures.Single();

    private static ExposurePlan Only(string text)
    {
        var exposure = HandKitPlan(text);
        exposure.Verdict.Missed.Should().BeEmpty();
        return exposure;
    }
}
