using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Where subject, camera, flash and light lie on and about the panel.</summary>
public sealed class PanelLayoutTests
{
    private const string Square = "width: 400 mm, depth: 400 mm";

    // Looking straight down on the middle of the frame, what the panel is larger than needed goes to both sides alike.
    [Fact]
    public void The_subject_stands_in_the_middle_of_a_panel_that_is_larger_than_needed() =>
        HandKit.Plan(HandKit.White, panel: Square).Panel.SubjectFromFront.Millimeters.Should().BeApproximately(200, 1e-6);

    // The entrance pupil lies f·(1/p − 1) behind the principal plane, which is f·(1 + 1/m) = 180 mm from the subject: 240 mm for p = ½. At 30°, equal pupils:
    // H = 90, α = atan(24/180) = 7.595°, 90·(cot 22.405° − cot 37.595°) = 101.4, + 60 = 161.4 → 170; p = ½: H = 120, α = 5.711°,
    // 120·(cot 24.289° − cot 35.711°) = 99.0, + 60 = 159.0 → 160.
    [Theory]
    [InlineData(1, 170)]
    [InlineData(0.5, 160)]
    public void The_camera_looks_from_its_entrance_pupil(double pupil, double depth) => HandKit.Plan(
            HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: 30°", StringComparison.Ordinal), lens: FormattableString.Invariant($"pupil-ratio: {pupil}"))
        .Panel.RequiredDepth.Millimeters.Should().BeApproximately(depth, 1e-6);

    // The aim is the middle of the subject, 5 mm over the sheet; the pupil 180 mm from it, up and towards the front: cos 60° = ½, sin 60° = 0.8660.
    [Fact]
    public void In_the_side_view_the_camera_stands_before_the_subject_and_looks_at_its_middle()
    {
        var plan = HandKit.Plan(
            "subjects: [{name: crane fly, group: flying-insects, length: 30 mm, height: 10 mm, speed: 0 m/s}]\n"
            + HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: 60°", StringComparison.Ordinal),
            panel: Square);
        var light = plan.PanelLights.Single();
        var sight = light.Framings.Single().Views.Single().Sight;

        sight.Aim.FromFront.Millimeters.Should().BeApproximately(plan.Panel.SubjectFromFront.Millimeters, 1e-6);
        (sight.Aim.Up - light.PanelHeight).Millimeters.Should().BeApproximately(5, 1e-6);
        (sight.Aim.FromFront - sight.Pupil.FromFront).Millimeters.Should().BeApproximately(90, 1e-6);
        (sight.Pupil.Up - sight.Aim.Up).Millimeters.Should().BeApproximately(155.885, 1e-3);
    }

    // Arc length R·φ: an eighth of a circle of 1 m is 785.4 mm, which comes on top of the flat that the frame needs, 110 mm.
    [Fact]
    public void A_swept_table_turns_up_an_eighth_of_a_circle_behind_the_flat()
    {
        var panel = HandKit.Plan(HandKit.White, panel: "sweep-radius: 1 m", frame: "kind: swept-table").Panel;

        panel.SweptLength.Millimeters.Should().BeApproximately(785.398, 1e-3);
        panel.Depth.Millimeters.Should().BeApproximately(110 + 785.398, 1e-3);
    }

    // Offsets count from the middle of the flat part: 400 mm of a sheet of 800 mm with a 400 mm arc.
    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    [InlineData(-60)]
    public void Under_a_swept_sheet_the_flash_stands_under_the_middle_of_the_flat(double back)
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("distance: 45 cm", FormattableString.Invariant($"distance: 45 cm, offset-back: {back} mm"), StringComparison.Ordinal),
            panel: "width: 400 mm, depth: 800 mm, sweep-radius: 1 m, sweep-angle: 22.91831°",
            frame: "kind: swept-table");

        plan.Panel.FlatDepth.Millimeters.Should().BeApproximately(400, 0.01);
        plan.PanelLights.Single().Flashes.Single().FromFront.Millimeters.Should().BeApproximately(200 + back, 0.01);
        plan.Frame!.LowerFlashes.Single().FromFront.Millimeters.Should().BeApproximately(200 + back, 0.01);
    }

    // A flash that stands aside and is tilted leans back to the middle: of two places 100 mm to either side of it the inner one is the brighter.
    [Theory]
    [InlineData("offset-right: 80 mm", 1, 0)]
    [InlineData("offset-right: -80 mm", -1, 0)]
    [InlineData("offset-back: 80 mm", 0, 1)]
    [InlineData("offset-back: -80 mm", 0, -1)]
    public void A_tilted_flash_leans_towards_the_middle(string offset, int right, int back)
    {
        var grid = GridWith($"{offset}, tilt: 30°");
        // 24 steps of 16.7 mm: the flash under column 12 ± 5, places four steps, 67 mm, to either side of it.
        var (inner, outer) = (grid.At(12 + right, 12 + back), grid.At(12 + (9 * right), 12 + (9 * back)));

        (inner - outer).Value.Should().BeGreaterThan(0.5);
    }

    // Columns count from the left, rows from the front.
    [Theory]
    [InlineData("offset-right: 80 mm", 17, 12)]
    [InlineData("offset-right: -80 mm", 7, 12)]
    [InlineData("offset-back: 80 mm", 12, 17)]
    [InlineData("offset-back: -80 mm", 12, 7)]
    public void The_panel_is_brightest_over_the_flash(string offset, int column, int row)
    {
        var grid = GridWith(offset);
        var best = Enumerable.Range(0, grid.Margins.Count).MaxBy(i => grid.Margins[i]);

        (best % grid.Columns).Should().BeInRange(column - 1, column + 1);
        (best / grid.Columns).Should().BeInRange(row - 1, row + 1);
    }

    // What is over clipping is white: with a target of nought every visible point is, by less than a third of a stop in the darkest place.
    [Fact]
    public void All_of_a_frame_that_is_over_clipping_counts_as_white()
    {
        var framing = HandKit.Plan(HandKit.White + "    target-white-margin: 0 stops\n", panel: Square).PanelLights.Single().Framings.Single();

        framing.Darkest.Margin.Value.Should().BeInRange(0, 1.0 / 3);
        framing.ClippedFraction.Should().Be(1);
    }

    // Of several camera angles the worst counts: at 25° the frame sees past a panel that fills it at 90°.
    [Fact]
    public void The_white_part_of_the_frame_is_told_for_the_angle_where_it_is_least()
    {
        var framing = HandKit.Plan(
            HandKit.White.Replace("camera-pitch: 90°", "camera-pitch: [90°, 25°]", StringComparison.Ordinal), panel: "width: 140 mm, depth: 110 mm")
            .PanelLights.Single().Framings.Single();

        framing.Views.Select(view => view.PanelFraction).Should().Contain(1).And.Contain(share => share < 0.95);
        framing.Views.Max(view => view.ClippedFraction).Should().BeGreaterThan(framing.Views.Min(view => view.ClippedFraction) + 0.05);
        framing.ClippedFraction.Should().Be(framing.Views.Min(view => view.ClippedFraction));
    }

    // Above a matt field of exitance ½·E_below a small underside gets F times that, F = 0.951 at 50 mm over 400 mm × 400 mm (rectangle to parallel
    // element above its middle, Howell: 4/(2π)·2·x/√(1 + x²)·atan(x/√(1 + x²)) at x = 200/50). Half way up a subject of 100 mm is 50 mm. The light above
    // gives E_above = 2560·P/0.4², and cos 22.5° of that to what faces midway between it, 45° up, and the camera straight above; the flash below 2560·P/0.45². The sheet is a third of a stop darker at its edges, which takes a tenth off.
    [Fact]
    public void Light_from_the_panel_on_the_underside_is_set_against_the_light_above()
    {
        var plan = HandKit.Plan(
            "subjects: [{name: crane fly, group: flying-insects, length: 30 mm, height: 100 mm, speed: 0 m/s}]\n" + HandKit.White, panel: Square);
        var lights = plan.Exposures.Single().Lights;
        var below = 0.5 * 0.951 * lights[0].Power.Fraction / (0.45 * 0.45);
        var above = lights[1].Power.Fraction / (0.4 * 0.4) * Math.Cos(Math.PI / 8);

        plan.PanelLights.Single().Framings.Single().UplightAgainstKey!.Value.Value.Should().BeApproximately(Math.Log2(below / above), 0.1);
    }

    private static MarginGrid GridWith(string light) => HandKit.Plan(
        HandKit.White.Replace("distance: 45 cm", $"distance: 30 cm, {light}", StringComparison.Ordinal), panel: Square).PanelLights.Single().Framings.Single().Grid;
}
