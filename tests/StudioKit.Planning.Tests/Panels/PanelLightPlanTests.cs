using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Planning.Tests.Panels;

public sealed class PanelLightPlanTests
{
    /// <summary>The light plan and the exposure are worked out on two ways; 0.02 stop is what the eye of a meter can tell.</summary>
    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void Margins_at_the_extremes_are_those_that_the_exposure_was_solved_for(string kit)
    {
        var plan = KitText.Demo(kit);
        var light = plan.PanelLights.Should().ContainSingle().Subject;

        light.Framings.Should().NotBeEmpty();
        foreach (var framing in light.Framings)
        {
            var exposure = plan.Exposures.Single(exposure => exposure.SetUp == light.SetUp && exposure.Framing.Name == framing.Framing);
            framing.Darkest.Margin.Value.Should().BeApproximately(exposure.WhiteMargin!.Value.Value, 0.02, framing.Framing);
            framing.Brightest.Margin.Value.Should().BeApproximately(exposure.BrightestMargin!.Value.Value, 0.02, framing.Framing);
        }
    }

    /// <summary>
    /// GN 30 m at ISO 100, 1/5.04 power, 45 cm, T = 0.5, f/16 at life size, ISO 500: 0.2227 lx·s at the sensor against 78/S = 0.156 lx·s,
    /// by inverse square (ISO 1230, ISO 2720), L = T·H/π and the camera equation of ISO 12232, worked by hand. Power and ISO speed of the plan may
    /// differ and count in proportion. 0.03 stop: ISO 500 stands for 504, a third stop's exact value.
    /// </summary>
    [Fact]
    public void Straight_above_a_small_bare_flash_the_margin_follows_from_the_guide_number()
    {
        var plan = LightKit.Plan(LightKit.Yaml());
        var framing = plan.PanelLights[0].Framings.Should().ContainSingle().Subject;
        var exposure = plan.Exposures.Single();

        var expected = Math.Log2(0.2227 / 0.156) + Math.Log2(framing.Power.Fraction * 5.04) + Math.Log2(exposure.Iso.Value / 500);
        framing.Brightest.Margin.Value.Should().BeApproximately(expected, 0.03);
    }

    /// <summary>
    /// Law of symmetry: flash, frame, ground and camera are their own mirror images. With skirts, rays that look for shadows between surfaces
    /// are drawn at points that are not, which leaves some hundredths of a stop; straight light is exact.
    /// </summary>
    [Theory]
    [InlineData("no", 1e-6)]
    [InlineData("yes", 0.05)]
    public void A_centred_flash_lights_left_and_right_alike(string skirts, double tolerance)
    {
        const int BehindTheRails = 3;
        var grid = LightKit.Plan(LightKit.Yaml(skirts: skirts)).PanelLights[0].Framings[0].Grid;

        for (var row = BehindTheRails; row < grid.Rows - BehindTheRails; row++)
        {
            for (var column = BehindTheRails; column < grid.Columns - BehindTheRails; column++)
            {
                grid.At(column, row).Value.Should().BeApproximately(grid.At(grid.Columns - 1 - column, row).Value, tolerance);
            }
        }
    }

    [Fact]
    public void A_sheet_that_is_swept_further_than_it_is_deep_is_planned_without_strips_over_pipes() =>
        LightKit.Plan(LightKit.Yaml().Replace("frame: {height: 500 mm}", "frame: {height: 500 mm, kind: swept-table}", StringComparison.Ordinal)).PanelLights[0].Covered.Should().BeEmpty();

    /// <summary>Linearity: two like flashes on one spot give twice the light, one stop.</summary>
    [Fact]
    public void A_second_flash_beside_the_first_saves_about_a_stop_of_power()
    {
        var one = LightKit.Plan(LightKit.Yaml("distance: 45 cm, offset-right: 0 mm"));
        var two = LightKit.Plan(LightKit.Yaml("distance: 45 cm, offset-right: 0 mm}\n      - {flash: below, role: below, distance: 45 cm"));

        two.PanelLights[0].Flashes.Should().HaveCount(2);
        (AtFullPower(two) - AtFullPower(one)).Should().BeApproximately(1, 1e-6);
    }

    [Fact]
    public void Every_view_of_the_camera_is_outlined_and_lies_within_the_framings_outline()
    {
        var framing = LightKit.Plan(LightKit.Yaml(pitch: "[40°, 90°]")).PanelLights[0].Framings[0];

        framing.Views.Should().HaveCount(2);
        framing.Views.Should().OnlyContain(view => view.PanelFraction == 1 && view.Patch.Count > 4);
        framing.Outline.Max(place => place.AlongSheet).Should().Be(framing.Views.SelectMany(view => view.Patch).Max(place => place.AlongSheet));
        framing.Outline.Min(place => place.Across).Should().Be(framing.Views.SelectMany(view => view.Patch).Min(place => place.Across));
    }

    /// <summary>36 mm × 24 mm at life size: an upright frame takes in 24 mm across and 36 mm along (plain geometry); 3 mm for what lies under the plane in focus.</summary>
    [Fact]
    public void A_camera_turned_upright_sees_an_upright_patch()
    {
        var yaml = LightKit.Yaml().Replace("camera-pitch: 90°", "camera-pitch: 90°\n    camera-roll: 90°", StringComparison.Ordinal);
        var patch = LightKit.Plan(yaml).PanelLights[0].Framings[0].Views[0].Patch;

        (patch.Max(place => place.Across) - patch.Min(place => place.Across)).Millimeters.Should().BeApproximately(24, 3);
        (patch.Max(place => place.AlongSheet) - patch.Min(place => place.AlongSheet)).Millimeters.Should().BeApproximately(36, 3);
    }

    [Theory]
    [InlineData("distance: 60 cm", LightProblemKind.InsideFloor)]
    [InlineData("distance: 1 cm, tilt: 80°, offset-right: 100 mm", LightProblemKind.AboveSheet)]
    [InlineData("distance: 45 cm, aim-back: 10 m, zoom: 400 mm", LightProblemKind.AimedAway)]
    [InlineData("distance: 45 cm, offset-right: 25 cm", LightProblemKind.OutsideSkirts)]
    public void An_impossible_place_of_the_flash_is_named_before_anything_is_computed(string below, LightProblemKind expected)
    {
        var plan = LightKit.Plan(LightKit.Yaml(below, "70 mm x 70 mm", skirts: "yes"));

        plan.PanelLights[0].Problems.Should().Contain(problem => problem.Kind == expected);
        plan.PanelLights[0].Framings.Should().BeEmpty();
        plan.Checks.Should().Contain(check => check.Kind == PlanCheckKind.FlashBelow && !check.Passed && check.Findings.OfType<CheckFinding.OfLight>().Any(finding => finding.Problem.Kind == expected));
    }

    /// <summary>
    /// By hand: 600 mm below a panel 500 mm up lies 100 mm in the ground; a window 70 mm wide whose middle is 250 mm to the side of a panel 400 mm wide reaches
    /// 250 + 35 − 200 = 85 mm through its skirt. A millimetre more than that mends it.
    /// </summary>
    [Theory]
    [InlineData("distance: 60 cm", CheckRemedyKind.FlashNearerPanel, 101, "distance: 499 mm")]
    [InlineData("distance: 45 cm, offset-right: 25 cm", CheckRemedyKind.FlashNearerMiddle, 86, "distance: 45 cm, offset-right: 164 mm")]
    public void A_flash_that_stands_where_it_cannot_is_told_how_far_to_go(string below, CheckRemedyKind kind, int millimeters, string mended)
    {
        PlanCheck Check(string light) => LightKit.Plan(LightKit.Yaml(light, "70 mm x 70 mm", skirts: "yes")).Checks.Single(check => check.Kind == PlanCheckKind.FlashBelow);

        var remedy = Check(below).Remedy!;

        (remedy.Kind, ((Length)((CheckAmount.Measure)remedy.Amount).Value).Millimeters).Should().Be((kind, millimeters));
        remedy.Parts.Should().Equal("below");
        Check(mended).Passed.Should().BeTrue();
    }

    /// <summary>
    /// Five-times rule (common practice): beyond five diameters a source is within a hundredth of the inverse-square law, which is 0.015 stop.
    /// At one diameter a matt disc gives 0.80 of it (closed form d²/(d² + R²)), 0.32 stop; a square of that side is a little wider.
    /// </summary>
    [Fact]
    public void Beyond_five_heads_the_inverse_square_law_holds()
    {
        var far = LightKit.Plan(LightKit.Yaml(head: "70 mm x 70 mm")).PanelLights[0].Flashes[0];
        var near = LightKit.Plan(LightKit.Yaml("distance: 7 cm", "70 mm x 70 mm")).PanelLights[0].Flashes[0];

        far.InverseSquareFrom.Millimeters.Should().BeApproximately(350, 1e-6);
        far.NearFieldShortfall.Value.Should().BeInRange(-0.015, 0);
        near.NearFieldShortfall.Value.Should().BeInRange(-0.5, -0.32);
    }

    [Fact]
    public void The_flash_is_measured_from_all_four_edges()
    {
        var flash = LightKit.Plan(LightKit.Yaml("distance: 45 cm, offset-right: 30 mm, offset-back: -50 mm")).PanelLights[0].Flashes[0];

        flash.FromLeft.Millimeters.Should().BeApproximately(230, 1e-9);
        flash.FromRight.Millimeters.Should().BeApproximately(170, 1e-9);
        flash.FromFront.Millimeters.Should().BeApproximately(150, 1e-9);
        flash.FromBack.Millimeters.Should().BeApproximately(250, 1e-9);
        flash.OverGround.Millimeters.Should().BeApproximately(50, 1e-9);
    }

    /// <summary>By the meaning of the words: a view that clips everywhere has its darkest point over clipping, one that clips nowhere its brightest under it.</summary>
    [Theory]
    [InlineData(-3)]
    [InlineData(-1)]
    [InlineData(0.33)]
    public void The_share_that_clips_at_the_planned_power_lies_between_what_its_extremes_say(double target)
    {
        var read = KitText.DemoRead("fen-edge.yaml");
        var plan = KitPlanner.Plan(read with
        {
            Kit = read.Kit! with { SetUps = [.. read.Kit.SetUps.Select(setUp => setUp with { TargetWhiteMargin = new Stops(target) })] },
        });
        var views = plan.PanelLights.SelectMany(light => light.Framings).SelectMany(framing => framing.Views).Where(view => view.Darkest is not null).ToList();

        views.Should().NotBeEmpty().And.OnlyContain(view => (view.Darkest!.Margin.Value >= 0) == (view.ClippedFraction >= view.PanelFraction));
        views.Should().OnlyContain(view => (view.Brightest!.Margin.Value >= 0) == (view.ClippedFraction > 0));
        views.Exists(view => view.Brightest!.Margin.Value < 0).Should().Be(target < 0, "under white some view clips nowhere, over it all do");
    }

    /// <summary>The panel's edges are flush with rails of 25 mm pipe, so what is nearer to an edge than that lies over one.</summary>
    [Fact]
    public void The_sheet_is_over_a_pipe_as_far_from_its_edges_as_the_rails_are_thick()
    {
        var light = KitText.Demo("fen-edge.yaml").PanelLights[0];

        Gen.Select(Gen.Double[-300, 300], Gen.Double[0, 400]).Where((x, y) => Math.Abs(FromEdge(x, y) - 25) > 0.01).Sample((x, y) =>
            light.IsOverPipe(new PanelPlace(Length.FromMillimeters(x), Length.FromMillimeters(y))) == FromEdge(x, y) < 25);

        static double FromEdge(double x, double y) => Math.Min(300 - Math.Abs(x), Math.Min(y, 400 - y));
    }

    /// <summary>The other route: a black rail between the flash and the sheet leaves nothing straight right over its middle.</summary>
    [Fact]
    public void Without_skirts_the_middle_of_every_strip_over_a_pipe_is_black_and_is_called_covered()
    {
        var plan = LightKit.Plan(LightKit.Yaml());
        var light = plan.PanelLights[0];

        light.Covered.Should().HaveCount(4);
        foreach (var strip in light.Covered)
        {
            var middle = new PanelPlace((strip.From.Across + strip.To.Across) / 2, (strip.From.AlongSheet + strip.To.AlongSheet) / 2);
            light.IsOverPipe(middle).Should().BeTrue();
            light.Framings[0].Grid.Margins.Min().Should().BeLessThan(-20, "nothing is thrown back in this studio");
        }
    }

    /// <summary>Behind the flat part a swept sheet rises from the frame, so no strip reaches there.</summary>
    [Fact]
    public void A_swept_sheet_is_over_pipes_on_its_flat_part_alone()
    {
        var plan = LightKit.Plan(LightKit.Yaml()
            .Replace("frame: {height: 500 mm}", "frame: {height: 500 mm, kind: swept-table}", StringComparison.Ordinal)
            .Replace("depth: 400 mm", "depth: 800 mm, sweep-radius: 1 m, sweep-angle: 22.9°", StringComparison.Ordinal));
        var light = plan.PanelLights[0];

        light.SweptLength.Millimeters.Should().BeApproximately(400, 1, "an arc of 22.9° about 1 m");
        light.Covered.Should().NotBeEmpty().And.AllSatisfy(strip => strip.Corners.Should().AllSatisfy(corner =>
            corner.AlongSheet.Meters.Should().BeLessThanOrEqualTo(light.FlatDepth.Meters + (strip.Width.Meters / 2))));
    }

    private static double AtFullPower(Plan plan)
    {
        var framing = plan.PanelLights[0].Framings[0];
        return framing.Brightest.Margin.Value + framing.Power.StopsBelowFull - Math.Log2(plan.Exposures.Single().Iso.Value);
    }
}
