using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Background and subject metered apart: the background is exposed, and the flash gives the subject what its own light lacks.</summary>
public sealed class SubjectApartTests
{
    // Three stops under the sky an eighth of the light is there; seven eighths, log₂ 0.875 = −0.19, are missing. The dial goes in thirds, the ISO too: within a sixth each.
    [Fact]
    public void A_subject_in_shade_before_a_bright_sky_is_filled_to_a_correct_exposure()
    {
        var exposure = Scene("daylight-fill", "ambient: EV 14, subject-ambient: EV 11");

        exposure.AmbientLevel.Value.Should().BeApproximately(0, 0.17, "the sky is exposed as metered");
        exposure.Lights.Single().Budget.Total.Value.Should().BeApproximately(-0.19, 0.18);
        exposure.SubjectLevel!.Value.Value.Should().BeApproximately(0, 0.2);
        exposure.Ambient.AtIso100.Should().Be(14);
        exposure.SubjectAmbient!.Value.AtIso100.Should().Be(11);
    }

    // A half and an eighth: log₂ 0.625 = −0.68.
    [Fact]
    public void A_fill_that_is_asked_for_is_given_and_the_subjects_own_light_counts_beside_it()
    {
        var exposure = Scene("daylight-fill", "ambient: EV 14, subject-ambient: EV 11, fill-level: -1 stop");

        exposure.Lights.Single().Budget.Total.Value.Should().BeApproximately(-1, 0.18);
        exposure.SubjectLevel!.Value.Value.Should().BeApproximately(-0.68, 0.2);
    }

    // Of the light on the subject an eighth is ambient: 0.125 / (0.125 + 0.875), the dial's sixth of a stop to either side.
    [Theory]
    [InlineData("daylight-fill")]
    [InlineData("low-light-fill")]
    public void Only_the_light_that_falls_on_the_subject_smears_it(string kind) =>
        Scene(kind, "ambient: EV 12, subject-ambient: EV 9, shutter: 1/125 s").Sharpness.Smear.Hand.LightShare.Should().BeApproximately(0.125, 0.02);

    [Fact]
    public void A_subject_as_bright_as_its_background_gets_the_least_fill_that_is_seen() =>
        Scene("low-light-fill", "ambient: EV 14, subject-ambient: EV 14", distance: "3 m").Lights.Single().Budget.Total.Value.Should().BeApproximately(-4, 0.18);

    // Before a black background four stops under, the subject may stand in light of its own.
    [Fact]
    public void Before_a_black_background_the_background_is_what_is_kept_under()
    {
        var together = Dark("ambient: EV 8");
        var apart = Dark("ambient: EV 8, subject-ambient: EV 10");

        apart.AmbientLevel.Should().Be(together.AmbientLevel, "the background is as bright as before");
        (apart.SubjectLevel!.Value - together.SubjectLevel!.Value).Value.Should().BePositive("two stops more of daylight lie on it");
    }

    [Fact]
    public void In_other_light_both_are_as_much_brighter()
    {
        var read = KitText.Read(Text("daylight-fill", "ambient: EV 14, subject-ambient: EV 11", "40 cm"));

        var brighter = new KitChange.Ambient("scene", new ExposureValue(15)).Apply(read.Kit!).SetUps.Single();

        brighter.Ambient!.Value.AtIso100.Should().Be(15);
        brighter.SubjectAmbient!.Value.AtIso100.Should().Be(12);
        KitSettings.Of(new KitChange.Ambient("scene", new ExposureValue(15)), read.Kit!).Select(setting => setting.Path).Should().Equal("set-ups[0].ambient", "set-ups[0].subject-ambient");
    }

    // Step by step, each a plan of the whole kit in that light; four are the most that are tried.
    [Theory]
    [InlineData("ambient: EV 12, subject-ambient: EV 9", "1 m")]
    [InlineData("ambient: EV 14, subject-ambient: EV 12", "80 cm")]
    public void The_light_that_a_session_takes_it_in_is_that_in_which_background_and_subject_change_together(string keys, string distance)
    {
        const string Moth = "subjects:\n  - {name: moth, group: flying-insects, length: 30 mm}\n";
        var read = KitText.Read(Text("daylight-fill", keys, distance) + Moth);
        var plan = KitPlanner.Plan(read);

        var bearing = PlanStages.Bearings(read.Kit!, read.Uncertainties, plan.PlannedFramings, plan.Light!, plan.Exposures).Single();

        (bearing.Planned.AtIso100 - bearing.Works.Darkest.AtIso100).Should().Be(Steps(-1));
        (bearing.Works.Brightest.AtIso100 - bearing.Planned.AtIso100).Should().Be(Steps(1));

        int Steps(int sign) => Enumerable.Range(1, 4).TakeWhile(step => In(sign * step).Verdict.Verdict <= plan.Exposures.Single().Verdict.Verdict).Count();

        ExposurePlan In(int step) => KitPlanner.Plan(read with { Kit = new KitChange.Ambient("scene", new ExposureValue(bearing.Planned.AtIso100 + step)).Apply(read.Kit!) }).Exposures.Single();
    }

    private static ExposurePlan Scene(string kind, string keys, string distance = "1 m") => KitText.Plan(Text(kind, keys, distance)).Exposures.Single();

    private static string Text(string kind, string keys, string distance) => HandKit.Of(
        $$"""
        set-ups:
          - {name: scene, kind: {{kind}}, aperture: f/11, {{keys}}, lights: [ {flash: two, role: fill, distance: {{distance}}, azimuth: 0°, elevation: 70° } ] }

        """).Replace("hand-speed: 0 m/s", "hand-speed: 1 mm/s", StringComparison.Ordinal);

    private static ExposurePlan Dark(string keys) => HandKit.Plan(
        $$"""
        set-ups:
          - {name: black, kind: dark-background, aperture: f/11, shutter: 1/125 s, iso: 400, {{keys}}, background-distance: 3 m, lights: [{flash: two, role: key, distance: 40 cm} ] }

        """).Exposures.Single();
}
