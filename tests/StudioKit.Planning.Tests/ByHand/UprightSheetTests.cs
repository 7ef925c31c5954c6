using StudioKit.Kits.SetUps;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A sheet that stands behind the subject, worked out on paper: at half life size the pupil of the 60 mm lens stands 180 mm before a field of 72 mm × 48 mm.</summary>
public sealed class UprightSheetTests
{
    private const double Pupil = 180;

    private static string SetUps(string pitch = "0°", string upright = "", string behind = "distance: 45 cm", string setUp = "background-distance: 300 mm", string over = "200 mm") =>
        $$"""
        subjects:
          - {name: sundew, group: plants-and-fungi, length: 40 mm, height: 20 mm}
        uprights:
          - {name: screen, sheet: {transmittance: 0.5, underside-reflectance: 0}{{(upright.Length > 0 ? $", {upright}" : "")}}}
        set-ups:
          - name: plant
            kind: white-background
            upright: screen
            height-over-ground: {{over}}
            {{setUp}}
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            camera-pitch: {{pitch}}
            lights:
              - {flash: one, role: behind, {{behind}}}
              - {flash: two, role: key, distance: 40 cm}

        """;

    [Fact]
    public void A_level_camera_needs_of_the_sheet_what_its_angle_of_view_cuts_out_there()
    {
        var upright = HandKit.Plan(SetUps()).Uprights.Single();

        // The field grows by (180 + 300)/180 at the sheet; the middle of the plant stands 200 + 10 mm over the ground; a margin of 30 mm all about.
        upright.RequiredWidth.Millimeters.Should().BeApproximately((72 * 480 / Pupil) + 60, 0.01);
        upright.RequiredHeight.Millimeters.Should().BeApproximately(210 + (24 * 480 / Pupil) + 30, 0.01);
        (upright.Width.Millimeters, upright.Height.Millimeters).Should().Be((260, 310), "rounded up to whole centimetres");
        upright.SeenUnder.Should().BeEmpty();
    }

    /// <summary>Rays through the frame's corners, cut in the room with the plane of the sheet: y = b + z·tan(lean), y and z counted from the plant's foot.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(5, 0)]
    [InlineData(0, 15)]
    [InlineData(10, 20)]
    [InlineData(20, 5)]
    public void A_camera_that_looks_down_on_a_sheet_that_leans_needs_what_its_rays_meet(double pitch, double lean)
    {
        var upright = HandKit.Plan(SetUps(pitch: $"{pitch}°", upright: $"lean: {lean}°, over-ground: 10 mm", over: "300 mm")).Uprights.Single();

        var (p, tan) = (pitch * Math.PI / 180, Math.Tan(lean * Math.PI / 180));
        var met = (from right in new[] { -36.0, 36 }
                   from up in new[] { -24.0, 24 }
                   let aimY = -Pupil * Math.Cos(p)
                   let aimZ = 10 + (Pupil * Math.Sin(p))
                   let wayY = (Pupil * Math.Cos(p)) + (up * Math.Sin(p))
                   let wayZ = (-Pupil * Math.Sin(p)) + (up * Math.Cos(p))
                   let far = (300 - aimY + (aimZ * tan)) / (wayY - (wayZ * tan))
                   select (X: right * far, Z: 300 + aimZ + (wayZ * far))).ToList();
        upright.RequiredWidth.Millimeters.Should().BeApproximately((2 * met.Max(place => place.X)) + 60, 0.01);
        upright.RequiredHeight.Millimeters.Should().BeApproximately(((met.Max(place => place.Z) - 10) / Math.Cos(lean * Math.PI / 180)) + 30, 0.01);
        var under = (10 - met.Min(place => place.Z)) / Math.Cos(lean * Math.PI / 180);
        upright.SeenUnder.Select(gap => Math.Round(gap.By!.Value.Millimeters, 2)).Should().Equal(under > 0.5 ? [Math.Round(under, 2)] : []);
    }

    [Fact]
    public void A_low_plant_is_told_how_far_the_camera_looks_under_the_sheet()
    {
        var plan = HandKit.Plan(SetUps(over: "30 mm", upright: "over-ground: 5 mm"));

        var check = plan.Checks.Single(check => check.Kind == PlanCheckKind.UprightGround);
        check.Passed.Should().BeFalse();
        check.Findings.OfType<CheckFinding.OfGap>().Single().Gap.By!.Value.Millimeters.Should().BeApproximately((24 * 480 / Pupil) - 40 + 5, 0.01, "64 mm under a middle that stands 40 mm over the ground");
    }

    [Fact]
    public void A_camera_that_looks_steeply_down_is_told_that_it_looks_past_any_sheet() =>
        HandKit.Plan(SetUps(pitch: "85°")).Uprights.Single().SeenUnder.Single().By.Should().BeNull();

    [Fact]
    public void A_sheet_given_too_small_fails_by_its_size_and_one_that_is_large_enough_passes()
    {
        PlanCheck Size(string keys) => HandKit.Plan(SetUps(upright: keys)).Checks.Single(check => check.Kind == PlanCheckKind.UprightSize);

        Size("width: 251 mm, height: 310 mm").Passed.Should().BeFalse("252 mm are needed");
        Size("width: 260 mm, height: 303 mm").Passed.Should().BeFalse("304 mm are needed");
        Size("width: 252 mm, height: 304 mm").Passed.Should().BeTrue();
    }

    /// <summary>
    /// The same light turned by a right angle: a panel whose subject's middle is 300 mm over it, seen from straight above, over a black ground. Only the pipes of its frame, which stand
    /// far off, are missing behind the sheet.
    /// </summary>
    [Fact]
    public void The_flash_behind_a_sheet_is_set_as_one_below_a_panel_that_lies_as_far_from_the_subject()
    {
        var upright = HandKit.Plan(SetUps(upright: "width: 900 mm, height: 900 mm", over: "440 mm")).Exposures.Single();
        var lying = HandKit.Plan(
            """
            subjects:
              - {name: sundew, group: plants-and-fungi, length: 40 mm, height: 600 mm}

            """ + HandKit.White,
            panel: "width: 900 mm, depth: 900 mm").Exposures.Single();

        upright.Lights[0].Power.Should().Be(lying.Lights[0].Power);
        upright.WhiteMargin!.Value.Value.Should().BeApproximately(lying.WhiteMargin!.Value.Value, 0.02);
        upright.BrightestMargin!.Value.Value.Should().BeApproximately(lying.BrightestMargin!.Value.Value, 0.02);
    }

    [Fact]
    public void A_flash_that_stands_lower_shines_up_at_the_sheet_behind_the_plant()
    {
        var flash = HandKit.Plan(SetUps(behind: "distance: 45 cm, offset-up: -15 cm, offset-right: 10 cm")).UprightLights.Single().Flashes.Single();

        flash.OverGround.Millimeters.Should().BeApproximately(60, 1e-6, "210 − 150 mm");
        flash.BehindSubject.Millimeters.Should().BeApproximately(750, 1e-6);
        flash.Tilt.Degrees.Should().BeApproximately(Math.Atan2(150, double.Hypot(450, 100)) * 180 / Math.PI, 1e-6);
        flash.Turn.Degrees.Should().BeApproximately(-Math.Atan2(100, 450) * 180 / Math.PI, 1e-6, "it stands to the right and turns left");
    }

    [Fact]
    public void A_flash_in_the_ground_fails_by_how_far_it_is_in()
    {
        var check = HandKit.Plan(SetUps(behind: "distance: 45 cm, offset-up: -22 cm")).Checks.Single(check => check.Kind == PlanCheckKind.FlashBehind);

        check.Passed.Should().BeFalse();
        check.Remedy!.Amount.Should().BeOfType<CheckAmount.Measure>().Which.Value.As(UnitsNet.Units.LengthUnit.Millimeter).Should().Be(16, "its middle is 10 mm under the ground and its window reaches 5 mm down");
    }

    [Fact]
    public void In_a_level_view_the_panel_and_the_sheet_behind_are_each_lit_to_their_own_margin()
    {
        var plan = HandKit.Plan(
            """
            subjects:
              - {name: beetle, group: crawling-insects-and-spiders, length: 40 mm, height: 20 mm}
            uprights:
              - {name: screen, carrier: frame, sheet: {transmittance: 0.3, underside-reflectance: 0}}
            set-ups:
              - name: level
                kind: white-background
                upright: screen
                background-distance: 150 mm
                aperture: f/16
                shutter: 1/200 s
                iso: 400
                camera-pitch: 5°
                lights:
                  - {flash: one, role: below, distance: 45 cm}
                  - {flash: three, role: behind, distance: 25 cm}
                  - {flash: two, role: above, distance: 40 cm}

            """,
            two: "spare-sets: 0} \n  - {name: three, guide-number: \"32 m @ ISO 100, 35 mm\", head: 10 mm x 10 mm, mass: 300 g");

        var exposure = plan.Exposures.Single();
        var (panel, sheet) = (plan.PanelLights.Single().Framings.Single(), plan.UprightLights.Single().Sheet.Framings.Single());
        exposure.Lights.Select(light => light.Role).Should().Equal(LightRole.Below, LightRole.Behind, LightRole.Above);
        panel.Darkest.Margin.Value.Should().BeInRange(1.0 / 3, (1.0 / 3) + exposure.Lights[0].DialStep.Value, "no more than a click over what is asked");
        sheet.Darkest.Margin.Value.Should().BeInRange(1.0 / 3, (1.0 / 3) + exposure.Lights[1].DialStep.Value);
        exposure.WhiteMargin!.Value.Value.Should().BeApproximately(Math.Min(panel.Darkest.Margin.Value, sheet.Darkest.Margin.Value), 1e-6);
        exposure.BrightestMargin!.Value.Value.Should().BeApproximately(Math.Max(panel.Brightest.Margin.Value, sheet.Brightest.Margin.Value), 1e-6);

        // Behind the beetle the panel reaches to the sheet's foot and a margin further, in whole centimetres.
        (plan.Panel.RequiredDepth - plan.Panel.SubjectFromFront).Millimeters.Should().BeInRange(180, 190);
        plan.Panel.SweepRadius.Should().BeNull();
        plan.Checks.Should().NotContain(check => check.Kind == PlanCheckKind.LowCameraAngles);
    }

    /// <summary>A ray at the frame's upper edge, 5° − atan(24/180) over the horizontal, never comes down to a flat panel: without a sheet behind the check says from which angle on one would do.</summary>
    [Fact]
    public void Where_a_flat_panel_ends_the_check_says_from_which_angle_on_it_would_do()
    {
        var check = HandKit.Plan(HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: 5°", StringComparison.Ordinal))
            .Checks.Single(check => check.Kind is PlanCheckKind.LowCameraAngles or PlanCheckKind.CameraAngles);

        // A sheet at most 1 m deep with 30 mm of margin: from the pupil, 180·sin p high, the upper ray falls by p − 7.6° and the lower by p + 7.6°.
        static double Depth(double degrees)
        {
            var (p, half) = (degrees * Math.PI / 180, Math.Atan2(24, Pupil));
            return Pupil * Math.Sin(p) * ((1 / Math.Tan(p - half)) - (1 / Math.Tan(p + half)));
        }

        var least = Enumerable.Range(8, 80).First(degrees => Depth(degrees) + 60 <= 1000);
        check.Remedy!.Amount.Should().Be(new CheckAmount.Measure(Angle.FromDegrees(least)));
        check.Remedy.Keys.Should().Contain("set-ups.upright");
    }
}
