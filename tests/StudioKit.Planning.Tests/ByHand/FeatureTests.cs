using StudioKit.Physics.Optics;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Features;
using StudioKit.Planning.Mending;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A subject's feature through a plan: half life size at f/16, f/24 effective, on pixels of 1 µm.</summary>
public sealed class FeatureTests
{
    private const string FinePixels = "pixels: 36000 x 24000";

    // Rayleigh: 1.22 · 0.55 µm · 24 / 0.5 = 32.2 µm; pixels of 1 µm take 0.7 % of a 16 µm period.
    [Theory]
    [InlineData("spacing: 33 µm", true)]
    [InlineData("spacing: 31.5 µm", false)]
    [InlineData("size: 16.5 µm", true)]
    [InlineData("size: 15.7 µm", false)]
    public void Black_and_white_is_resolved_from_rayleighs_separation_on(string fineness, bool resolved)
    {
        var feature = Feature($"{fineness}, contrast: 1");

        feature.Resolved.Should().Be(resolved);
        feature.Limit.Should().Be(resolved ? null : FeatureLimit.Diffraction);
        feature.Finest.Micrometers.Should().BeApproximately(32.3, 0.2);
        feature.ShownWhole.Should().BeTrue("20 mm lie in a field of 72 mm");
    }

    // Two pixels of 12 µm at the subject, 24 µm, hold before diffraction's 8 µm at f/4 (f/6 effective).
    [Theory]
    [InlineData("25 µm", true)]
    [InlineData("23 µm", false)]
    public void On_coarse_pixels_two_of_them_are_the_limit(string spacing, bool resolved)
    {
        var feature = Feature($"spacing: {spacing}, contrast: 1", pixels: "pixels: 6000 x 4000", aperture: "f/4");

        feature.Resolved.Should().Be(resolved);
        feature.Limit.Should().Be(resolved ? null : FeatureLimit.Pixels);
    }

    // Rays alone (0.5 % of the cut-off): contrast falls to the criterion at a spot of 1.101 periods of 0.5 mm on the sensor; 2·d·N/m² = 2 · 0.5505 · 4.2 / 0.25 = 18.5 mm deep.
    // Frames: (37 − 18.5)/(0.7 · 18.5) = 1.43, so 2 steps and 3 frames.
    [Theory]
    [InlineData("18 mm", 1)]
    [InlineData("37 mm", 3)]
    public void A_feature_deeper_than_one_frame_is_taken_in_several(string relief, int frames)
    {
        var feature = Feature($"spacing: 1 mm, contrast: 1, relief: {relief}", aperture: "f/2.8");

        feature.Depth!.Value.Millimeters.Should().BeApproximately(18.5, 0.5, "the pupil is near enough to bend the field a little");
        feature.Frames.Should().Be(frames);
        feature.Limit.Should().Be(frames == 1 ? null : FeatureLimit.Defocus);
    }

    [Fact]
    public void A_wing_that_beats_smears_its_feature()
    {
        var feature = Feature("spacing: 100 µm", speed: "20 m/s");

        feature.Resolved.Should().BeFalse();
        feature.Limit.Should().Be(FeatureLimit.Smear);
    }

    [Fact]
    public void What_is_fainter_than_the_criterion_is_shown_at_no_magnification()
    {
        var plan = Plan("spacing: 1 mm, contrast: 0.05");

        plan.Features.Should().OnlyContain(feature => feature.Limit == FeatureLimit.Faintness && feature.LowestMagnification == null && feature.WidestAperture == null);
        var check = plan.Checks.Single(each => each.Kind == PlanCheckKind.Feature);
        check.Passed.Should().BeFalse();
        check.Remedy.Should().BeNull();
        check.Findings.Should().ContainSingle(finding => finding is CheckFinding.OfFeature);
    }

    // At f/16 marked the effective f-number is 16·(1 + m), and Rayleigh's 1.22·λ·16·(1 + m)/m is 25 µm for m/(1 + m) = 0.429, m = 0.753; 1:1.3 is the least mark above, 1:1.4 is below.
    [Fact]
    public void The_lowest_magnification_offered_resolves_it_once_the_kit_has_it_and_the_mark_below_does_not()
    {
        var plan = Plan("spacing: 25 µm, contrast: 1");

        plan.Features.Single().LowestMagnification!.Value.Nominal.Should().Be("1:1.3");
        var check = plan.Checks.Single(each => each.Kind == PlanCheckKind.Feature);
        check.Passed.Should().BeFalse();
        check.Remedy!.Kind.Should().Be(CheckRemedyKind.ShowLarger);
        check.Remedy.Amount.Should().Be(new CheckAmount.Enlargement(plan.Features.Single().LowestMagnification!.Value));
        check.Remedy.Parts.Should().Equal("rush 60", "white");
        At("1:1.3").Checks.Single(each => each.Kind == PlanCheckKind.Feature).Passed.Should().BeTrue();
        At("1:1.4").Checks.Single(each => each.Kind == PlanCheckKind.Feature).Passed.Should().BeFalse();

        static Plan At(string magnification) => KitText.Plan(Text("spacing: 25 µm, contrast: 1").Replace("magnifications: [1:2]", $"magnifications: [{magnification}]", StringComparison.Ordinal));
    }

    // An even smear over x of a period keeps sin(πx)/(πx); the smear is the plan's own for that animal.
    [Fact]
    public void Smear_takes_from_a_feature_what_its_length_takes_from_a_grating()
    {
        var plan = Plan("spacing: 400 µm", speed: "2 m/s");
        var periods = plan.Exposures.Single().Sharpness.SmearAtSubject.Micrometers / 400;

        periods.Should().BeInRange(0.05, 0.9, "the animal moves while the flash burns");
        (plan.Features.Single().Contrast / Feature("spacing: 400 µm").Contrast).Should().BeApproximately(Math.Sin(Math.PI * periods) / (Math.PI * periods), 1e-6);
    }

    // The smaller aperture asks for more magnification: what is offered is the less.
    [Fact]
    public void Of_two_set_ups_the_one_that_need_come_less_close_is_offered()
    {
        var second = HandKit.White.Replace("set-ups:\n", "", StringComparison.Ordinal).Replace("name: white", "name: dim", StringComparison.Ordinal).Replace("f/16", "f/18", StringComparison.Ordinal);
        var plan = KitText.Plan(Text("spacing: 25 µm, contrast: 1") + second);

        plan.Features.Select(feature => feature.LowestMagnification!.Value.Value).Distinct().Should().HaveCount(2);
        plan.Checks.Single(each => each.Kind == PlanCheckKind.Feature).Remedy!.Parts.Should().Equal("rush 60", "white");
    }

    [Fact]
    public void The_features_of_two_subjects_are_checked_apart_and_lead_to_the_subject()
    {
        var plan = KitText.Plan(Text("spacing: 1 mm, contrast: 0.05").Replace(
            "subjects:\n", "subjects:\n  - {name: hopper, group: crawling-insects-and-spiders, length: 10 mm, feature: {name: spots, spacing: 2 mm} }\n", StringComparison.Ordinal));

        var (hopper, skater) = (Of("hopper"), Of("pond skater"));
        hopper.Passed.Should().BeTrue();
        skater.Passed.Should().BeFalse();
        CheckLikeness.IsSame(hopper, skater).Should().BeFalse();
        CheckLikeness.IsSame(skater, skater with { Passed = true }).Should().BeTrue();
        CheckKeys.Of(skater, plan).Should().OnlyContain(key => key.Path.StartsWith("subjects", StringComparison.Ordinal));
        CheckConcerns.Of(skater.Kind).Should().Be(CheckConcern.Cards);
        MendCandidates.For(skater, plan).Should().BeEmpty("to come closer is to take another card");

        PlanCheck Of(string subject) => plan.Checks.Single(check => check.Kind == PlanCheckKind.Feature && check.Parts[0] == subject);
    }

    [Fact]
    public void The_widest_aperture_offered_resolves_it_in_one_frame_and_the_mark_before_does_not()
    {
        const string Deep = "spacing: 100 µm, contrast: 0.6, relief: 4 mm";
        var widest = Feature(Deep).WidestAperture!.Value;

        var wider = Math.Pow(2, -1 / 6.0) * widest.Value;
        Feature(Deep, aperture: widest.Nominal).Frames.Should().Be(1);
        Feature(Deep, aperture: $"f/{wider:0.0}").Frames.Should().BeGreaterThan(1);
    }

    private static FeaturePlan Feature(string feature, string pixels = FinePixels, string aperture = "f/16", string speed = "0 m/s") => Plan(feature, pixels, aperture, speed).Features.Single();

    private static Plan Plan(string feature, string pixels = FinePixels, string aperture = "f/16", string speed = "0 m/s") => KitText.Plan(Text(feature, pixels, aperture, speed));

    private static string Text(string feature, string pixels = FinePixels, string aperture = "f/16", string speed = "0 m/s") => HandKit.Of(
        $$"""
        subjects:
          - name: pond skater
            group: crawling-insects-and-spiders
            length: 20 mm
            speed: {{speed}}
            feature: {name: hairs, {{feature}} }

        """ + HandKit.White.Replace("aperture: f/16", $"aperture: {aperture}", StringComparison.Ordinal),
        camera: pixels);
}
