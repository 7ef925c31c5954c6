using StudioKit.Kits.Lighting;
using StudioKit.Planning.Standing;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Standing;

/// <summary>Where lights about the subject stand, worked out on paper for <see cref="HandKit"/>.</summary>
public sealed class LightStandTests
{
    private const string Dark =
        """
        set-ups:
          - name: black
            kind: dark-background
            aperture: f/16
            camera-pitch: 0°
            height-over-ground: 40 cm
            background-distance: 3 m
            lights:
              - {flash: two, role: key, distance: 50 cm KEY}
              - {flash: one, role: rim, distance: 60 cm RIM}

        """;

    /// <summary>cos 30° of what faces midway between a light 30° up and a camera straight above, against cos 5° of one 80° up, which the lens does not hide: 0.202 stops more power, besides which nothing changes.</summary>
    [Fact]
    public void A_light_from_the_side_is_set_brighter_by_the_cosine_of_half_its_angle_to_the_lens()
    {
        Power("elevation: 80°").Should().BeApproximately(Power("elevation: 30°") + Math.Log2(Math.Cos(Math.PI / 6) / Math.Cos(Math.PI / 36)), 1e-9);
        Power("azimuth: 90°, elevation: 30°").Should().BeApproximately(Power("azimuth: -90°, elevation: 30°"), 1e-9);

        static double Power(string direction) => HandKit.Plan(HandKit.White.Replace("40 cm}", $"40 cm, {direction}}}", StringComparison.Ordinal)).Exposures.Single().Lights[1].ExactPower.Value;
    }

    /// <summary>Three camera angles, one exposure: the mean of what each costs, 0.5·(0 + 0.2075) for 90° and 30° before a light 90° and so 0° and 60° from them.</summary>
    [Fact]
    public void A_card_for_several_camera_angles_takes_the_mean_of_what_each_costs()
    {
        var plan = HandKit.Plan(HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: [90°, 30°]", StringComparison.Ordinal).Replace("40 cm}", "40 cm, elevation: 90°}", StringComparison.Ordinal));

        plan.LightStands.Single().DirectionLoss.Value.Should().BeApproximately(Math.Log2(Math.Cos(Math.PI / 6)) / 2, 1e-9);
        plan.Exposures.Single().Lights[1].Budget.Lines.Single(line => line.Item == "Direction").Stops.Value.Should().BeApproximately(Math.Log2(Math.Cos(Math.PI / 6)) / 2, 1e-9);
    }

    /// <summary>A rim draws the outline, which faces it.</summary>
    [Fact]
    public void A_rim_light_from_behind_costs_nothing_by_its_direction() =>
        Stand("rim", rim: "azimuth: 180°, elevation: 20°").DirectionLoss.Value.Should().Be(0);

    /// <summary>30° up at 50 cm: 43.3 cm out and 25 cm up; 120° to the right: sin 120° of that right, and cos 60° of it behind.</summary>
    [Fact]
    public void A_place_is_told_in_steps_from_the_subject()
    {
        var stand = Stand("key", key: "azimuth: 120°, elevation: 30°");

        stand.Right.Centimeters.Should().BeApproximately(37.5, 1e-9);
        stand.Back.Centimeters.Should().BeApproximately(50 * Math.Sqrt(0.75) / 2, 1e-9);
        stand.Up.Centimeters.Should().BeApproximately(25, 1e-9);
        stand.OverGround.Centimeters.Should().BeApproximately(65, 1e-9);
        stand.From.Hour.Should().BeApproximately(2, 1e-9);
    }

    /// <summary>Usual directions (common practice, no source): a key from the left before, a rim from behind across from it, both above the level of the subject.</summary>
    [Fact]
    public void Where_a_kit_gives_no_direction_a_rim_stands_behind_and_across_from_the_key()
    {
        var (key, rim) = (Stand("key"), Stand("rim"));

        (key.Right.Meters, key.Back.Meters).Should().Match<(double Right, double Back)>(place => place.Right < 0 && place.Back < 0);
        (rim.Right.Meters, rim.Back.Meters).Should().Match<(double Right, double Back)>(place => place.Right > 0 && place.Back > 0);
        (key.Up.Meters, rim.Up.Meters).Should().Match<(double Key, double Rim)>(up => up.Key > 0 && up.Rim > 0);
    }

    /// <summary>A head of 10 mm at 50 cm: 2·atan(5/500) = 1.146°, hard; a softbox of 300 mm at 50 cm fills 2·atan(150/500) = 33.4°, very soft.</summary>
    [Fact]
    public void A_light_is_as_soft_as_it_looks_large_from_the_subject()
    {
        var bare = Stand("key");
        var soft = KitText.Plan(HandKit.Of(Dark.Replace("KEY", ", modifier: box", StringComparison.Ordinal).Replace("RIM", "", StringComparison.Ordinal) + "modifiers: [{name: box, kind: softbox, size: 300 mm x 300 mm}]\n"))
            .LightStands[0];

        bare.AngleAcross.Degrees.Should().BeApproximately(1.1459, 1e-4);
        soft.AngleAcross.Degrees.Should().BeApproximately(33.3985, 1e-4);
        (bare.Softness, soft.Softness).Should().Be((Softness.Hard, Softness.VerySoft));
    }

    /// <summary>A fill a stop under the key leaves half of it in the key's shadow: log₂(1 + 1/½) = 1.58 stops, but for the click of the dials and the black sky of EV 0.</summary>
    [Fact]
    public void A_shadow_is_as_deep_as_the_fill_leaves_it()
    {
        var text = Dark.Replace("KEY", "", StringComparison.Ordinal).Replace("role: rim", "role: fill", StringComparison.Ordinal).Replace("RIM", "", StringComparison.Ordinal)
            .Replace("aperture: f/16", "aperture: f/16\n    fill-level: -1 stop", StringComparison.Ordinal);
        var plan = HandKit.Plan(text);
        var levels = plan.Exposures.Single().Lights.Select(light => light.Budget.Total.Ratio).ToList();

        plan.LightStands[0].ShadowDepth!.Value.Value.Should().BeApproximately(Math.Log2(1 + (levels[0] / levels[1])), 0.02).And.BeApproximately(1.58, 0.35);
    }

    /// <summary>The camera looks level past the key; a rim right behind the subject stands in its picture, one 40° to the side does not: the field of 72 mm is some 300 mm wide 60 cm on.</summary>
    [Theory]
    [InlineData("azimuth: 180°, elevation: 0°", true)]
    [InlineData("azimuth: 140°, elevation: 30°", false)]
    public void A_light_that_stands_in_the_picture_is_named(string rim, bool seen) =>
        Stand("rim", rim: rim).Faults.Any(fault => fault.Kind == LightFaultKind.InPicture).Should().Be(seen);

    /// <summary>The lens stands between the subject and a light behind it; the usual places are clear of it.</summary>
    [Theory]
    [InlineData("azimuth: 0°, elevation: 0°", true)]
    [InlineData("azimuth: -45°, elevation: 45°", false)]
    public void A_light_behind_the_lens_is_named(string key, bool hidden)
    {
        var stand = Stand("key", key: key);

        (stand.LensCovers > 0.99).Should().Be(hidden);
        stand.Faults.Any(fault => fault.Kind == LightFaultKind.BehindLens).Should().Be(hidden);
    }

    /// <summary>65 cm over the ground, and 5 cm of flash behind the window of a head that is 30° up: its back is 2.5 cm higher.</summary>
    [Theory]
    [InlineData("kind: stand, lowest: 70 cm, highest: 90 cm", LightFaultKind.TooLow, 2.5)]
    [InlineData("kind: stand, lowest: 30 cm, highest: 60 cm", LightFaultKind.TooHigh, 7.5)]
    [InlineData("kind: ground", LightFaultKind.TooHigh, 45)]
    public void A_holder_that_does_not_go_so_low_or_so_high_is_named_with_what_it_lacks(string holder, LightFaultKind kind, double centimetres)
    {
        var fault = Held(holder).Faults.Single(fault => fault.Kind is LightFaultKind.TooLow or LightFaultKind.TooHigh);

        fault.Kind.Should().Be(kind);
        fault.By!.Value.Centimeters.Should().BeApproximately(centimetres, 1e-6);
    }

    [Theory]
    [InlineData("kind: stand", false)]
    [InlineData("kind: hand, reach: 20 cm", true)]
    [InlineData("kind: arm, reach: 20 cm", true)]
    [InlineData("kind: hand, reach: 150 cm", false)]
    public void A_holder_that_does_not_reach_is_named(string holder, bool isShort) =>
        Held(holder).Faults.Any(fault => fault.Kind == LightFaultKind.OutOfReach).Should().Be(isShort);

    /// <summary>A stand does not go through the sheet: its boom brings the light over it, from beyond the frame's edge.</summary>
    [Fact]
    public void A_stand_beside_the_frame_holds_a_light_over_the_sheet_by_its_boom()
    {
        var plan = KitText.Plan(HandKit.Of(
            HandKit.White.Replace("40 cm}", "40 cm, azimuth: 90°, elevation: 80°, holder: pole}", StringComparison.Ordinal) + "holders: [{name: pole, kind: stand, reach: 60 cm}]\n", panel: "width: 600 mm, depth: 400 mm"));
        var stand = plan.LightStands.Single();

        // The head's back lies 0.45·cos 80° = 7.8 cm right of the middle; the sheet reaches 30 cm, and a post stands 3 cm clear of it and its rails.
        stand.ReachNeeded.Centimeters.Should().BeInRange(30 + 3 - 7.9, 30 + 3 + 3 - 7.8);
        stand.HolderLine[0].Right.Centimeters.Should().BeGreaterThan(32.9);
        stand.HeldBy.Should().Be(HolderKind.Stand);
        stand.Faults.Should().NotContain(fault => fault.Kind == LightFaultKind.OutOfReach);
    }

    /// <summary>Mirror law: behind the subject as high as the camera looks down, the flash is seen in the glossy sheet, in a satin one not; a bare head's image is far over white.</summary>
    [Theory]
    [InlineData("gloss", true)]
    [InlineData("satin", false)]
    public void A_flash_across_from_the_camera_is_mirrored_by_a_glossy_sheet(string finish, bool mirrored)
    {
        var text = HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: 50°", StringComparison.Ordinal).Replace("40 cm}", "40 cm, azimuth: 180°, elevation: 50°}", StringComparison.Ordinal);

        var stand = HandKit.Plan(text, panel: $"finish: {finish}").LightStands.Single();

        (stand.GlareLevel is not null).Should().Be(mirrored);
        stand.Faults.Any(fault => fault.Kind == LightFaultKind.Glare).Should().Be(mirrored);
    }

    /// <summary>
    /// A matt sheet that throws back 0.36 shows twice the tone of 18 % where light falls on it as on the subject; 10° off the vertical it does to within 0.02 stop. The tone lies at the
    /// flash's level less 2.97 stops under clipping, where 10/S lies under 78/S.
    /// </summary>
    [Fact]
    public void The_sheet_under_an_upper_flash_is_brighter_than_the_mid_tone_by_what_it_throws_back_more()
    {
        var text = HandKit.Of(HandKit.White.Replace("40 cm}", "40 cm, elevation: 80°}", StringComparison.Ordinal)).Replace("underside-reflectance: 0", "underside-reflectance: 0.36", StringComparison.Ordinal);
        var plan = KitText.Plan(text);

        plan.LightStands.Single().SheetLevel!.Value.Value.Should().BeApproximately(plan.Exposures.Single().Lights[1].Budget.Total.Value + 1 - Math.Log2(78.0 / 10), 0.03);
    }

    private static LightStandPlan Stand(string role, string key = "", string rim = "") =>
        HandKit.Plan(Dark.Replace("KEY", More(key), StringComparison.Ordinal).Replace("RIM", More(rim), StringComparison.Ordinal)).LightStands.Single(stand => stand.Role.ToString().Equals(role, StringComparison.OrdinalIgnoreCase));

    private static LightStandPlan Held(string holder) =>
        KitText.Plan(HandKit.Of(Dark.Replace("KEY", ", azimuth: -90°, elevation: 30°, holder: held", StringComparison.Ordinal).Replace("RIM", "", StringComparison.Ordinal) + $"holders: [{{name: held, {holder}}}]\n")).LightStands[0];

    private static string More(string keys) => keys.Length == 0 ? "" : $", {keys}";
}
