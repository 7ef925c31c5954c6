using StudioKit.Physics.Optics;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Smear through a plan: half life size on pixels of 6 µm, a hand that sways at 5 mm/s.</summary>
public sealed class SmearTests
{
    // m·v·t: half of 5 mm/s for 1/30 s (1/32 exactly) is 78.1 µm, 13.0 pixels. Daylight and a fill two stops under it: 1/(1 + 1/4) of the light.
    [Theory]
    [InlineData("shutter: 1/30 s, ")]
    [InlineData("shutter: 1/60 s, ")]
    [InlineData("")]
    public void A_hand_smears_the_daylight_whoever_chose_the_shutter(string shutter)
    {
        var exposure = Dusk(shutter, hand: "5 mm/s");
        var sharpness = exposure.Sharpness;

        var hand = 0.5 * 5e-3 * exposure.Shutter.Seconds / 6e-6;
        var daylight = Math.Pow(2, exposure.AmbientLevel.Value);
        var share = daylight / (daylight + Math.Pow(2, exposure.Lights.Single().Budget.Total.Value));
        sharpness.Smear.Hand.Pixels.Should().BeApproximately(hand, 1e-6);
        // A picture of a fifth of the light is a ghost over a sharp one; what goes beyond that takes detail away.
        sharpness.SmearPixels.Should().BeApproximately(hand * Math.Sqrt((share - 0.2) / 0.8), 0.02 * hand, "the flash is over in a thousandth of the time");
        sharpness.SmearAtSubject.Micrometers.Should().BeApproximately(sharpness.SmearPixels * 6 / 0.5, 1e-6);
    }

    // f/16 at half life size is f/24 effective: 1.22 · 0.55 µm · 24 / 0.5 = 32.2 µm between two points that part; 11.6 pixels of 12 µm smear 139 µm.
    [Fact]
    public void Finest_detail_is_what_smear_leaves()
    {
        var sharpness = Dusk("shutter: 1/30 s, ", hand: "5 mm/s").Sharpness;

        sharpness.StillDetail.Micrometers.Should().BeApproximately(32.2, 0.05);
        sharpness.FinestDetail.Micrometers.Should().BeApproximately(double.Hypot(32.2, sharpness.SmearAtSubject.Micrometers), 0.05).And.BeInRange(135, 150);
        sharpness.AiryDiscAtSubject.Micrometers.Should().BeApproximately(64.4, 0.1, "twice as wide as what parts two points");
    }

    // A 1500th of the 43.27 mm diagonal passes for sharp: 28.8 µm, 4.8 pixels.
    [Fact]
    public void Smear_rules_once_it_is_longer_than_what_passes_for_sharp()
    {
        var shaken = Dusk("shutter: 1/30 s, ", hand: "5 mm/s").Sharpness;

        shaken.SmearLimit.Should().BeApproximately(4.81, 0.005);
        shaken.SmearRules.Should().Be(MotionBlurKind.Hand);
        Dusk("shutter: 1/30 s, ", hand: "1 mm/s").Sharpness.SmearRules.Should().BeNull("2.3 pixels pass");
        Dusk("shutter: 1/30 s, ", hand: "1 mm/s", speed: "20 mm/s").Sharpness.SmearRules.Should().Be(MotionBlurKind.Subject);
    }

    [Fact]
    public void On_a_tripod_a_still_subject_keeps_its_detail()
    {
        var sharpness = Dusk("shutter: 1/30 s, ", hand: "0 m/s").Sharpness;

        sharpness.SmearPixels.Should().Be(0);
        sharpness.FinestDetail.Should().Be(sharpness.StillDetail);
    }

    // m·v·t with the sway of what it rests on, measured or usual for its kind: 150 µm/s on a tripod, common practice, no source.
    [Theory]
    [InlineData("kind: tripod, sway: 1 mm/s", 1e-3)]
    [InlineData("kind: tripod", 0.15e-3)]
    [InlineData("kind: bean-bag", 0.6e-3)]
    public void A_camera_that_rests_on_something_sways_as_that_does(string support, double sway)
    {
        var sharpness = Dusk("shutter: 1/30 s, support: post, ", hand: "5 mm/s", supports: $"supports: [{{name: post, {support}}}]").Sharpness;

        sharpness.Smear.Hand.Pixels.Should().BeApproximately(0.5 * sway / 32 / 6e-6, 1e-6);
    }

    // The longest shutter in the dusk smears the circle of confusion, and so is as much longer as the camera is steadier, to the next mark.
    [Fact]
    public void The_shutter_that_the_plan_chooses_goes_by_what_the_camera_rests_on()
    {
        var (held, rested) = (Dusk("", hand: "5 mm/s"), Dusk("support: post, ", hand: "5 mm/s", supports: "supports: [{name: post, kind: bean-bag, sway: 1 mm/s}]"));

        Math.Log2(rested.Shutter.Seconds / held.Shutter.Seconds).Should().BeApproximately(Math.Log2(5), 0.34);
        rested.Support.Should().Be("post");
    }

    // Blur at the subject's ends grows with smear as the focused plane's does: both in quadrature.
    [Fact]
    public void Smear_blurs_the_subjects_ends_too()
    {
        var (still, shaken) = (Dusk("shutter: 1/30 s, ", hand: "0 m/s").Sharpness, Dusk("shutter: 1/30 s, ", hand: "5 mm/s").Sharpness);

        shaken.NearestBlur!.Value.Micrometers.Should()
            .BeApproximately(double.Hypot(still.NearestBlur!.Value.Micrometers, shaken.SmearAtSubject.Micrometers), 1e-6);
    }

    private static ExposurePlan Dusk(string shutter, string hand, string speed = "0 m/s", string supports = "") => KitText.Plan(HandKit.Of(
        $$"""
        subjects: [{name: crane fly, group: flying-insects, length: 30 mm, speed: {{speed}}}]
        {{supports}}
        set-ups:
          - {name: dusk, kind: low-light-fill, aperture: f/16, {{shutter}}ambient: EV 9, camera-pitch: 90°, fill-level: -2 stops, lights: [{flash: two, role: fill, distance: 2 m}]}

        """).Replace("hand-speed: 0 m/s", $"hand-speed: {hand}", StringComparison.Ordinal)).Exposures.Single();
}
