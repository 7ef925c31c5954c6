using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.SetUps.WhiteBackground;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>The sheet behind a plant lights its edges; how much is worked out on paper.</summary>
public sealed class EdgeSpillPlanTests
{
    // What faces midway between light and lens.
    private static readonly double Beside = Math.Cos(4 * Math.PI / 180);

    private const double Same = 1e-6;

    // A flash of GN 32 gives 2560 cd·s (ISO 1230 with C = 250): through half a sheet at 45 cm 6321 lx·s at full power, next to even over 10 cm. Each edge sees two quarters of the
    // sheet, 5 cm square and 5 cm away, at right angles: F = (atan 1 − atan(1/√2)/√2)/2π = 0.0557 each (Howell's B-4). From 8° beside the line of sight come 2560/0.4² = 16000 lx·s at the cosine of half of that.
    [Fact]
    public void Each_edge_gets_what_its_half_of_the_sheet_sends_it()
    {
        var exposure = UprightKit.Exposure();
        var (behind, key) = (Power(exposure, LightRole.Behind), Power(exposure, LightRole.Key));
        var factor = (Math.Atan(1) - (Math.Atan(1 / Math.Sqrt(2)) / Math.Sqrt(2))) / (2 * Math.PI);
        var byHand = Math.Log2(6321 * behind * 2 * factor / (16000 * Beside * key));

        exposure.EdgeSpill!.Limbs.Select(limb => limb.Limb).Should().Equal(Enum.GetValues<SubjectLimb>());
        exposure.EdgeSpill.Limbs.Should().OnlyContain(limb => Math.Abs(limb.AgainstKey.Value - byHand) < 0.1, "the corners of the sheet get a tenth less");
    }

    // Correct by the guide-number rule are 250·N_e²/S lx·s, and behind a filter as much more as it takes.
    [Theory]
    [InlineData("", 0)]
    [InlineData("; filter: grey", 1.5)]
    public void Level_against_correct_exposure_is_that_of_the_key_and_the_edge_against_it(string filter, double loss)
    {
        var exposure = KitText.Plan(UprightKit.Of(setUp: "background-distance: 5 cm" + filter, sections: "accessories: {filters: [{name: grey, kind: neutral-density, loss: 1.5 stops, mass: 20 g}]}\n")).Exposures.Single();
        var key = Math.Log2(16000 * Beside * Power(exposure, LightRole.Key) / (250 * Math.Pow(exposure.EffectiveAperture.Value, 2) / exposure.Iso.Value)) - loss;

        exposure.EdgeSpill!.Limbs.Should().OnlyContain(limb => Math.Abs(limb.Level.Value - limb.AgainstKey.Value - key) < 1e-6);
    }

    [Fact]
    public void A_plant_low_before_the_sheet_gets_more_on_its_upper_edge()
    {
        var spill = UprightKit.Exposure("width: 160 mm, height: 160 mm, over-ground: 165 mm").EdgeSpill!;

        spill.Strongest.Limb.Should().Be(SubjectLimb.Upper);
        Of(spill, SubjectLimb.Upper).Should().BeGreaterThan(Of(spill, SubjectLimb.Left)).And.BeGreaterThan(Of(spill, SubjectLimb.Lower) + 0.3);
        Of(spill, SubjectLimb.Left).Should().BeApproximately(Of(spill, SubjectLimb.Right), 1e-6);
    }

    // A camera that looks down sees the upper edge turned towards the sheet, and the lower away from it.
    [Fact]
    public void From_above_the_upper_edge_faces_the_sheet_and_gets_more()
    {
        var level = UprightKit.Exposure("width: 400 mm, height: 400 mm");
        var looking = KitText.Plan(UprightKit.Of("width: 400 mm, height: 400 mm").Replace("camera-pitch: 0°", "camera-pitch: 20°", StringComparison.Ordinal)).Exposures.Single();

        Against(looking, SubjectLimb.Upper).Should().BeGreaterThan(Against(level, SubjectLimb.Upper) + 0.2);
        Against(looking, SubjectLimb.Lower).Should().BeLessThan(Against(level, SubjectLimb.Lower) - 0.2);
    }

    // Powers apart, which follow from all angles together, as does the cosine at which the key counts: a few hundredths of a stop.
    [Fact]
    public void Over_several_camera_angles_each_edge_counts_where_it_gets_most()
    {
        var both = KitText.Plan(UprightKit.Of("width: 400 mm, height: 400 mm").Replace("camera-pitch: 0°", "camera-pitch: [0°, 20°]", StringComparison.Ordinal)).Exposures.Single();
        var above = KitText.Plan(UprightKit.Of("width: 400 mm, height: 400 mm").Replace("camera-pitch: 0°", "camera-pitch: 20°", StringComparison.Ordinal)).Exposures.Single();
        var level = UprightKit.Exposure("width: 400 mm, height: 400 mm");

        AtOnePower(both, SubjectLimb.Upper).Should().BeApproximately(AtOnePower(above, SubjectLimb.Upper), 0.05);
        AtOnePower(both, SubjectLimb.Lower).Should().BeApproximately(AtOnePower(level, SubjectLimb.Lower), 0.05);

        static double AtOnePower(ExposurePlan exposure, SubjectLimb limb) => Against(exposure, limb) - Math.Log2(Power(exposure, LightRole.Behind) / Power(exposure, LightRole.Key));
    }

    [Fact]
    public void A_sheet_further_behind_lights_edges_less() => Against(UprightKit.Exposure(setUp: "background-distance: 6 cm"), SubjectLimb.Left)
        .Should().BeLessThan(Against(UprightKit.Exposure(), SubjectLimb.Left) - 0.2);

    // Close before a large sheet an edge gets next to half of what leaves it; a margin of two stops makes that five times correct exposure and more.
    [Theory]
    [InlineData("background-distance: 1 cm; target-white-margin: 2 stops; veil-limit: 3 stops", true)]
    [InlineData("background-distance: 10 cm; target-white-margin: 0 stops", false)]
    public void Edges_that_get_a_stop_more_than_the_lights_on_the_subject_give_are_warned_of(string setUp, bool warned)
    {
        var exposure = UprightKit.Exposure("width: 400 mm, height: 400 mm", setUp);

        exposure.IsUsable.Should().BeTrue("a warning is no limit");
        exposure.Warnings.Select(warning => warning.Seen).Should().Equal(warned ? [Symptom.EatenEdges] : []);
        (exposure.EdgeSpill!.Strongest.AgainstKey.Value >= 1).Should().Be(warned);
        (exposure.EdgeSpill.Strongest.RimShare > 0).Should().Be(warned);
    }

    [Theory]
    [InlineData(0.9, 1.5, false)]
    [InlineData(1, -1, true)]
    public void What_is_warned_of_is_light_against_that_on_the_subject(double against, double level, bool warned) =>
        ExposureWarnings.Of(null, new EdgeSpillPlan { Limbs = [new LimbSpill(SubjectLimb.Left, new Stops(against), new Stops(level), 0.1)] }).Should().HaveCount(warned ? 1 : 0);

    [Fact]
    public void Less_from_behind_is_turned_first_while_the_sheet_stays_white()
    {
        var (now, advice) = Advice("width: 400 mm, height: 400 mm", "background-distance: 2 cm", "2/3 stop");

        advice.Changes.Should().AllBeOfType<KitChange.TargetMargin>();
        (now.EdgeSpill!.Strongest.AgainstKey - advice.Promise.EdgeSpill!.Value).Value.Should().BeApproximately(1.0 / 3, 1e-6, "a click of the dial");
        advice.Promise.WhiteMargin!.Value.Value.Should().BeGreaterThanOrEqualTo(-Same);
    }

    // Nothing to spare in the white: the sheet goes further off, and is cut larger where its size is given and the camera would look past it.
    [Theory]
    [InlineData("width: 300 mm, height: 400 mm", false)]
    [InlineData("width: 110 mm, height: 250 mm", true)]
    [InlineData("", false)]
    public void Without_white_to_spare_the_sheet_goes_further_off(string sheet, bool larger)
    {
        var (now, advice) = Advice(sheet, "background-distance: 2 cm", "0 stops");

        advice.Changes[0].Should().BeOfType<KitChange.Background>().Which.Distance.Centimeters.Should().BeGreaterThan(2);
        advice.Changes.OfType<KitChange.RecutUpright>().Select(cut => cut.Width.Millimeters > 110 && cut.Height.Millimeters >= 250).Should().Equal(larger ? [true] : []);
        advice.Promise.EdgeSpill!.Value.Value.Should().BeLessThan(now.EdgeSpill!.Strongest.AgainstKey.Value - 0.3);
    }

    // A sheet of 40 cm × 40 cm where 17 cm × 27 cm would do.
    [Fact]
    public void Last_of_all_a_sheet_larger_than_it_must_be_is_cut_smaller()
    {
        var plan = KitText.Plan(UprightKit.Of("width: 400 mm, height: 400 mm", "background-distance: 2 cm"));
        var (now, setUp, upright) = (plan.Exposures.Single(), plan.Kit.SetUps[0], plan.Kit.Uprights[0]);
        var needed = plan.Uprights.Single() with { Width = Length.FromMillimeters(170), Height = Length.FromMillimeters(270) };

        var rule = EdgeSymptoms.Of(setUp, upright, now, _ => needed).Single();
        var mended = now with { EdgeSpill = new EdgeSpillPlan { Limbs = [now.EdgeSpill!.Strongest with { AgainstKey = new Stops(-5) }] } };
        rule.Mends(mended).Should().BeTrue();
        rule.Mends(mended with { WhiteMargin = new Stops(-0.1) }).Should().BeFalse("the sheet stays white");
        rule.Mends(now).Should().BeFalse();
        rule.Ladder.Last().Should().Equal(new KitChange.RecutUpright("reed screen", needed.Width, needed.Height));
        EdgeSymptoms.Of(setUp, upright, now, _ => plan.Uprights.Single()).Single().Ladder.SelectMany(changes => changes).Should().NotContain(change => change is KitChange.RecutUpright);
    }

    // What nobody can see has no row of its own on the card, and whoever sees eaten edges there looks for another cause.
    [Fact]
    public void Where_no_rim_is_lit_by_the_sheet_nothing_is_told_against_it()
    {
        var plan = KitText.Plan(UprightKit.Of("width: 300 mm, height: 400 mm", "background-distance: 30 cm"));

        plan.Exposures.Single().EdgeSpill!.Strongest.AgainstKey.Value.Should().BeLessThan(-1);
        plan.Advice.Against(plan.Exposures.Single(), Symptom.EatenEdges).Should().BeNull();
    }

    [Fact]
    public void Without_light_on_the_subject_or_a_sheet_behind_there_is_nothing_to_compare()
    {
        KitText.Plan(UprightKit.Of().Replace("      - {flash: two, role: key, distance: 40 cm, azimuth: 8°, elevation: 0°}\n", "", StringComparison.Ordinal)).Exposures.Single().EdgeSpill.Should().BeNull();
        var flat = HandKit.Plan(HandKit.White, panel: "width: 400 mm, depth: 400 mm");
        flat.Exposures.Single().EdgeSpill.Should().BeNull();
        flat.Advice.Against(flat.Exposures.Single(), Symptom.EatenEdges).Should().BeNull();
    }

    private static (ExposurePlan Now, Advice Advice) Advice(string sheet, string setUp, string margin)
    {
        var plan = KitText.Plan(UprightKit.Of(sheet, setUp + $"; target-white-margin: {margin}"));
        var now = plan.Exposures.Single();
        return (now, plan.Advice.Against(now, Symptom.EatenEdges)!.Advice!);
    }

    private static double Against(ExposurePlan exposure, SubjectLimb limb) => Of(exposure.EdgeSpill!, limb);

    private static double Of(EdgeSpillPlan spill, SubjectLimb limb) => spill.Limbs.Single(one => one.Limb == limb).AgainstKey.Value;

    private static double Power(ExposurePlan exposure, LightRole role) => exposure.Lights.Single(light => light.Role == role).Power.Fraction;
}
