using StudioKit.Kits;
using StudioKit.Kits.Shelters;
using StudioKit.Physics;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What umbrellas, cloths and screens do to light, wind and hands of a plan.</summary>
public sealed class ShelterTests
{
    // As wide as it hangs high: an even sky is hidden by half.
    private const string Umbrella = "shelters: [{name: brolly, kind: umbrella, size: 1.6 m x 1.6 m, distance: 80 cm, transmittance: 10 %}]\n";

    private const string Dusk = """
        set-ups:
          - {name: dusk, kind: low-light-fill, aperture: f/8, shutter: 1/60 s, ambient: EV 9, MORE lights: [{flash: one, role: fill, distance: 1 m}]}

        """;

    // Without sun half of the sky by a tenth: 1 − 0.5 · 0.9 = 0.55, 0.8625 stops. In EV 15 an eighth is the sky's: 7/8 · 0.1 + 0.55/8 = 0.15625, 2.678 stops.
    [Theory]
    [InlineData("EV 9", "", 0.55)]
    [InlineData("EV 15", "", 0.15625)]
    [InlineData("EV 15", "sun-share: 40 %, ", (0.4 * 0.1) + (0.6 * 0.55))]
    [InlineData("EV 9", "sun-share: 100 %, ", 0.1)]
    public void An_umbrella_takes_the_sun_by_its_cloth_and_the_sky_by_what_it_hides(string ambient, string share, double left)
    {
        var exposure = Fill("shelters: [brolly], " + share, ambient).Exposures[0];

        exposure.ShelterLoss.Value.Should().BeApproximately(-Math.Log2(left), 1e-9);
        exposure.Ambient.AtIso100.Should().Be(double.Parse(ambient[3..], System.Globalization.CultureInfo.InvariantCulture), "what is metered in the open goes before");
    }

    [Fact]
    public void Over_the_subject_of_a_habitat_the_background_stays_and_the_fill_makes_up_for_it()
    {
        var (open, under) = (Fill("", "EV 9").Exposures[0], Fill("shelters: [brolly], ", "EV 9").Exposures[0]);

        (under.Aperture, under.Shutter, under.Iso).Should().Be((open.Aperture, open.Shutter, open.Iso));
        under.AmbientLevel.Should().Be(open.AmbientLevel);

        // What is left, 0.55 of the light, lacks 0.45: 1.15 stops under; the usual fill is one stop under.
        var lacks = Math.Log2(0.45);
        (under.Lights[0].ExactPower.Value - open.Lights[0].ExactPower.Value).Should().BeApproximately(lacks + 1, 1e-6);
        Fill("fill-level: -2 stops, ", "EV 9").Exposures[0].Lights[0].Power.Should().Be(Fill("fill-level: -2 stops, shelters: [brolly], ", "EV 9").Exposures[0].Lights[0].Power, "a level that is given stays");
        Fill("shelters: [brolly], subject-ambient: EV 8, ", "EV 9").Exposures[0].Lights[0].ExactPower.Value.Should()
            .BeApproximately(open.Lights[0].ExactPower.Value + 1 + Math.Log2(1 - (0.55 / 2)), 1e-6, "a stop darker and 0.55 of that");
    }

    [Fact]
    public void Over_the_sheet_daylight_on_the_subject_drops_by_as_much()
    {
        var (open, under) = (White("", "EV 9", ""), White(Umbrella, "EV 9", "shelters: [brolly]"));

        (open.Exposures[0].AmbientLevel.Value - under.Exposures[0].AmbientLevel.Value).Should().BeApproximately(-Math.Log2(0.55), 1e-6);
    }

    // Midsummer noon at 52.3° N: the sun stands 90° − 52.3° + 23.44° = 61.1° high.
    [Fact]
    public void On_a_day_the_sky_of_the_sun_s_height_is_what_counts_and_the_shade_moves_towards_the_sun()
    {
        const string Site = "date: 2026-06-21, latitude: 52.3° N, longitude: 0° E, utc-offset: 0 h, ";
        var exposure = KitText.Plan(HandKit.Of(Umbrella + Dusk.Replace("MORE", "shelters: [brolly], clock: 11:30 to 12:30,", StringComparison.Ordinal).Replace("EV 9", "EV 15", StringComparison.Ordinal))
            .Replace("site: {", "site: {" + Site, StringComparison.Ordinal)).Exposures[0];
        var height = Angle.FromDegrees(61.1);
        var share = 1 - (DaylightIlluminance.Clear(height).Sky / LightMeter.IlluminanceOf(new(15)));

        exposure.SunShare.Should().BeApproximately(share, 0.002);
        exposure.Shelters.Single().Sunward!.Value.Centimeters.Should().BeApproximately(80 / Math.Tan(height.Radians), 0.3);
        exposure.ShelterLoss.Value.Should().BeInRange(-Math.Log2((share * 0.1) + (1 - share)), -Math.Log2((share * 0.1) + ((1 - share) * 0.55)), "moved aside it hides less of the sky than overhead");
    }

    [Theory]
    [InlineData("1.6 m x 1.6 m", true)]
    [InlineData("10 cm x 10 cm", false)]
    public void A_shade_must_cover_the_sheet(string size, bool covers)
    {
        var plan = White(Umbrella.Replace("1.6 m x 1.6 m", size, StringComparison.Ordinal), "EV 9", "shelters: [brolly]");
        var check = plan.Checks.Single(check => check.Kind == PlanCheckKind.ShelterSize);

        check.Passed.Should().Be(covers);

        // The corners of the sheet, and half a degree of sun from 80 cm.
        ((CheckAmount.TwoSides)check.Demand).Width.Millimeters.Should().BeApproximately(
            double.Hypot(plan.Panel.Width.Millimeters + 7.4, plan.Panel.Depth.Millimeters + 7.4), 0.1);
    }

    [Fact]
    public void A_low_sun_throws_the_subject_s_own_height_beyond_a_shade_as_large_as_the_sheet()
    {
        double Wide(string clock) => ((CheckAmount.TwoSides)KitText.Plan(HandKit.Of(Umbrella + HandKit.White.Replace("iso: 400", $"iso: 400\n    ambient: EV 15\n    shelters: [brolly]\n    clock: {clock}", StringComparison.Ordinal)
            + "subjects: [{name: moth, group: flying-insects, length: 30 mm, height: 20 mm}]\n")
            .Replace("site: {", "site: {date: 2026-06-21, latitude: 52.3° N, longitude: 0° E, utc-offset: 0 h, ", StringComparison.Ordinal)).Checks.Single(check => check.Kind == PlanCheckKind.ShelterSize).Demand).Width.Millimeters;

        Wide("04:30 to 05:30").Should().BeGreaterThan(Wide("11:30 to 12:30") + 50);
    }

    // 1.2 m high, 1.2 m to windward: one height behind it 0.35 of holes leave 0.4 + 0.4 · 0.25/0.4 = 0.65 of the wind.
    [Fact]
    public void A_wind_break_takes_its_share_of_the_gust_off_the_frame()
    {
        const string Screen = "shelters: [{name: screen, kind: wind-break, size: 3 m x 1.2 m, porosity: 35 %, distance: 1.2 m}]\n";
        var (open, behind) = (White(Screen, "EV 0", ""), White(Screen, "EV 0", "shelters: [screen]"));

        behind.Frame!.Wind!.Left.Should().BeApproximately(0.65, 1e-9);
        (behind.Frame.Wind.Gust / open.Frame!.Wind!.Gust).Should().BeApproximately(0.65, 1e-9);
        White(Screen.Replace("3 m x 1.2 m", "3 m x 40 cm", StringComparison.Ordinal), "EV 0", "shelters: [screen]").Frame!.Wind!.Left.Should().Be(1, "it is lower than the sheet");
        White(Screen.Replace("3 m x 1.2 m", "60 cm x 1.2 m", StringComparison.Ordinal), "EV 0", "shelters: [screen]").Frame!.Wind!.Left.Should().Be(1, "the wind comes round it");
        Tipping(behind).Should().BeApproximately(Tipping(open) * 0.65 * 0.65, 1e-6, "wind presses by its square");

        static double Tipping(Plan plan) => plan.Checks.Single(check => check.Kind == PlanCheckKind.Tipping).Ratio!.Value;
    }

    [Fact]
    public void A_frame_that_stands_for_another_set_up_without_a_wind_break_stands_in_the_wind()
    {
        const string Screen = "shelters: [{name: screen, kind: wind-break, size: 3 m x 1.2 m, distance: 1.2 m}]\n";
        var second = HandKit.White.Replace("set-ups:\n", "", StringComparison.Ordinal).Replace("name: white", "name: again", StringComparison.Ordinal);

        HandKit.Plan(Screen + HandKit.White.Replace("iso: 400", "iso: 400\n    shelters: [screen]", StringComparison.Ordinal) + second).Frame!.Wind!.Left.Should().Be(1);
    }

    [Theory]
    [InlineData("Beaufort 3", true)]
    [InlineData("Beaufort 6", false)]
    public void An_umbrella_stands_in_so_much_wind_and_no_more(string wind, bool stands) =>
        KitText.Plan(HandKit.Of(Umbrella + Dusk.Replace("MORE", "shelters: [brolly],", StringComparison.Ordinal)).Replace("site: {", $"site: {{wind: {wind}, ", StringComparison.Ordinal))
            .Checks.Single(check => check.Kind == PlanCheckKind.ShelterWind).Passed.Should().Be(stands);

    // Camera, fill and umbrella: three hands, two to each person.
    [Theory]
    [InlineData("", "", false)]
    [InlineData("pack: {people: [{name: Ada, body-mass: 60 kg}, {name: Bo, body-mass: 70 kg}]}\n", "", true)]
    [InlineData("holders: [{name: post, kind: stand}]\n", ", holder: post", true)]
    public void Somebody_must_have_a_hand_free_for_it(string more, string holder, bool enough)
    {
        var plan = HandKit.Plan(more + Umbrella.Replace("distance", "held: yes, distance", StringComparison.Ordinal)
            + Dusk.Replace("MORE", "shelters: [brolly],", StringComparison.Ordinal).Replace("distance: 1 m", "distance: 1 m" + holder, StringComparison.Ordinal));

        plan.Checks.Single(check => check.Kind == PlanCheckKind.Hands).Passed.Should().Be(enough);
    }

    [Fact]
    public void A_light_goes_to_a_stand_where_a_hand_is_wanting_and_then_there_are_enough()
    {
        var read = KitText.Read(HandKit.Of("holders: [{name: post, kind: stand}]\n" + Umbrella.Replace("distance", "held: yes, distance", StringComparison.Ordinal) + Dusk.Replace("MORE", "shelters: [brolly],", StringComparison.Ordinal)));
        var plan = KitPlanner.Plan(read);

        var mend = new CheckMender(plan, changes => KitPlanner.Plan(Changed(read, changes))).Of(plan.Checks.Single(check => check.Kind == PlanCheckKind.Hands));

        mend!.Changes.Should().Equal(new KitChange.Hold("dusk", 0, "post"));
        KitPlanner.Plan(Changed(read, mend.Changes)).Checks.Single(check => check.Kind == PlanCheckKind.Hands).Passed.Should().BeTrue();
    }

    /// <summary>Daylight too bright for the sheet, and an umbrella in the bag: it is offered, and a whole plan with it keeps the promise.</summary>
    [Fact]
    public void An_umbrella_in_the_bag_is_offered_where_the_place_is_too_bright_and_the_whole_plan_then_works()
    {
        var read = KitText.Read(HandKit.Of(Umbrella.Replace("10 %", "2 %", StringComparison.Ordinal) + HandKit.White.Replace("iso: 400", "iso: 400\n    ambient: EV 15", StringComparison.Ordinal).Replace("f/16", "f/8", StringComparison.Ordinal)));
        var plan = KitPlanner.Plan(read);
        var exposure = plan.Exposures[0];
        exposure.Verdict.Verdict.Should().NotBe(Verdict.Works, "the sun is too bright on purpose");

        var advice = plan.Advice.Mending(exposure).Single(advice => advice.Changes.Any(change => change is KitChange.PutUp));

        advice.Changes.Should().Equal(new KitChange.PutUp("white", "brolly"));
        var after = KitPlanner.Plan(Changed(read, advice.Changes));
        after.Exposures[0].Verdict.Should().Be(advice.Promise.Verdict);
        after.Exposures[0].ShelterLoss.Value.Should().BeGreaterThan(2);
        KitSettings.Of(advice.Changes[0], read.Kit!).Single().Path.Should().Be("set-ups[0].shelters");
    }

    /// <summary>Whatever the umbrella and the light: a card that offers it promises what a whole plan with it has.</summary>
    [Fact]
    public void An_umbrella_that_is_offered_keeps_what_it_promises()
    {
        var offers = 0;
        Gen.Select(Gen.Int[8, 16], Gen.Int[3, 20], Gen.Int[0, 60], Gen.Int[0, 2]).Sample(
            any =>
            {
                var (light, decimetres, percent, aperture) = (any.Item1, any.Item2, any.Item3, new[] { "f/5.6", "f/8", "f/16" }[any.Item4]);
                var umbrella = $"shelters: [{{name: brolly, kind: umbrella, size: {decimetres * 10} cm x {decimetres * 10} cm, transmittance: {percent} %}}]\n";
                var read = KitText.Read(HandKit.Of(umbrella + HandKit.White.Replace("iso: 400", $"iso: 400\n    ambient: EV {light}", StringComparison.Ordinal).Replace("f/16", aperture, StringComparison.Ordinal)));
                var plan = KitPlanner.Plan(read);
                foreach (var advice in plan.Advice.Mending(plan.Exposures[0]).Where(advice => advice.Changes.Any(change => change is KitChange.PutUp)))
                {
                    var after = KitPlanner.Plan(Changed(read, advice.Changes)).Exposures[0];
                    (after.Verdict, after.Iso, after.Shutter).Should().Be((advice.Promise.Verdict, advice.Promise.Iso, advice.Promise.Shutter));
                    (after.Verdict.Verdict < plan.Exposures[0].Verdict.Verdict).Should().BeTrue("it is better than before");
                    offers++;
                }
            },
            iter: 40,
            threads: 1);

        offers.Should().BePositive();
    }

    [Fact]
    public void It_is_packed_put_up_in_a_step_and_warned_of()
    {
        var plan = HandKit.Plan(Umbrella + Dusk.Replace("MORE", "shelters: [brolly],", StringComparison.Ordinal).Replace("EV 9", "EV 12", StringComparison.Ordinal)
            + "  - {name: night, kind: low-light-fill, aperture: f/8, shutter: 1/60 s, ambient: EV 12, lights: [{flash: one, role: fill, distance: 1 m}]}\nsubjects: [{name: moth, group: flying-insects, length: 30 mm}]\n");

        plan.Pack.Items.Should().ContainSingle(item => item.Name == "brolly");
        var steps = plan.Session!.Steps.Where(step => step.Kind == SessionStepKind.Sheltering).ToList();
        steps.Should().HaveCount(2, "up for the one, down for the other");
        steps.Single(step => step.PutUp.Count > 0).PutUp.Single().Should().Match<ShelterPlan>(shelter => shelter.Name == "brolly" && shelter.Kind == ShelterKind.Umbrella);
        steps.Single(step => step.TakenDown.Count > 0).TakenDown.Should().Equal("brolly");
        plan.Cautions.Single(caution => caution.Kind == CautionKind.BlowsAway).Shelters.Select(shelter => shelter.Name).Should().Equal("brolly");
    }

    [Fact]
    public void A_tub_under_a_shade_stays_cooler()
    {
        const string Tub = "covers: [{name: tub, shape: tub, inside: 90 mm x 90 mm x 40 mm, material: polystyrene}]\n";
        double Kelvins(string shelters) => White(Umbrella + Tub, "EV 13", "cover: tub\n    sun-share: 50 %\n    shelters: [" + shelters + "]").Covers.Single().Warming!.Value.Kelvins;

        // 0.5 · 0.1 + 0.5 · 0.55 = 0.325 of the light warms by as much less.
        var open = White(Umbrella + Tub, "EV 13", "cover: tub").Covers.Single().Warming!.Value.Kelvins;
        Kelvins("brolly").Should().BeApproximately(0.325 * open, 1e-6 * open);
    }

    private static Plan Fill(string more, string ambient) => HandKit.Plan(Umbrella + Dusk.Replace("MORE ", more, StringComparison.Ordinal).Replace("EV 9", ambient, StringComparison.Ordinal));

    private static Plan White(string sections, string ambient, string more) =>
        HandKit.Plan(sections + HandKit.White.Replace("iso: 400", $"iso: 400\n    ambient: {ambient}\n    {more}", StringComparison.Ordinal));

    private static KitReadResult Changed(KitReadResult read, ValueList<KitChange> changes) => read with { Kit = changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) };
}
