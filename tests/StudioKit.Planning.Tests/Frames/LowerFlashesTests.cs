using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Tests.Frames;

/// <summary>Several set-ups that light the panel from below: each flash in each place gets a cradle, or the plan says why not.</summary>
public sealed class LowerFlashesTests
{
    // 20 mm pipe, fittings of 11 + 16 mm: lower rails lie from 63 mm to 432 mm up, 54 mm apart; a rail stands 60 mm under the window.
    private const string Yaml = """
        kit: Reed margin
        camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
        lenses:
          - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, mass: 300 g, cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4}
          - {name: willow, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm}
          - {name: alder, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, mass: 250 g}
        modifiers: [{name: dome, kind: dome, mass: 25 g}]
        panel: {width: 600 mm, depth: 400 mm, skirts: SKIRTS}
        frame:
          height: 500 mm
          stretchers: never
          pipe: {part: pvc-u-20x1.5}
          fittings: pvc-u-20
        site: {slope: 0°}
        subjects:
          - {name: moth, group: flying-insects, length: 40 mm}
        set-ups:
          - {name: white, kind: white-background, lights: [{flash: sedge, role: below, distance: FIRST}, {flash: alder, role: above, distance: 40 cm}]}
          - {name: pale, kind: white-background, lights: [SECOND, {flash: alder, role: above, distance: 40 cm}]}

        """;

    private static readonly PanelPlan Panel = new()
    {
        RequiredWidth = Length.FromMillimeters(600),
        RequiredDepth = Length.FromMillimeters(400),
        Width = Length.FromMillimeters(600),
        Depth = Length.FromMillimeters(400),
        SizeGiven = true,
        SubjectFromFront = Length.FromMillimeters(200),
        Material = "white acrylic",
        Thickness = Length.FromMillimeters(3),
        Mass = Mass.FromGrams(857),
        MassOrigin = MassOrigin.Weighed,
    };

    [Fact]
    public void A_second_white_set_up_with_its_flash_higher_gets_its_own_cradle()
    {
        var frame = Frame("300 mm", "{flash: sedge, role: below, distance: 200 mm}");

        frame.LowerFlashes.Select(flash => (flash.Flash, flash.SetUps.Single(), flash.Support))
            .Should().Equal(("sedge", "white", FlashSupport.Cradle), ("sedge", "pale", FlashSupport.Cradle));
        frame.LowerFlashes.Select(flash => flash.CradleJoint).Should().OnlyHaveUniqueItems().And.NotContainNulls();
        frame.LowerFlashes.Select(flash => Math.Round(flash.Window.Up, 6)).Should().Equal(0.200, 0.300);
        frame.Geometry.Problems.Should().BeEmpty();
        frame.Assembly.OfType<AssemblyStep.PutFlash>().Should().OnlyContain(step => step.Named).And.HaveCount(2);
        frame.Assembly.OfType<AssemblyStep.PutFlash>().Select(step => step.Flash).Should().Equal(frame.LowerFlashes);
    }

    [Theory]
    [InlineData("{flash: willow, role: below, distance: 300 mm}", FlashSupport.SharedCradle, null)]
    [InlineData("{flash: willow, role: below, distance: 430 mm}", FlashSupport.Ground, null)]
    [InlineData("{flash: willow, role: below, distance: 270 mm}", FlashSupport.OwnStand, CradleFaultKind.TooNearAnotherRail)]
    [InlineData("{flash: willow, role: below, distance: 399 mm}", FlashSupport.OwnStand, CradleFaultKind.TooLow)]
    [InlineData("{flash: willow, role: below, distance: 300 mm, offset-right: 25 cm}", FlashSupport.OwnStand, CradleFaultKind.OutsideLegs)]
    public void Or_the_plan_says_why_not(string second, FlashSupport support, CradleFaultKind? fault)
    {
        var frame = Frame("300 mm", second);
        var flash = frame.LowerFlashes[1];

        flash.Support.Should().Be(support);
        (flash.Fault?.Kind).Should().Be(fault);
        (flash.CradleJoint is null).Should().Be(support != FlashSupport.SharedCradle);
        frame.LowerFlashes[0].Support.Should().Be(FlashSupport.Cradle);
        frame.Geometry.Refused.Should().Be(fault is null ? 0 : 1);
        frame.Geometry.Problems.Should().BeEmpty();
        flash.Moves.Any().Should().Be(fault is not null);
    }

    /// <summary>Whatever a refused flash is told to move by, the plan of the kit with it moved holds it, and a frame with all its pipes fails no other check of itself.</summary>
    [Theory]
    [InlineData("{flash: willow, role: below, distance: 270 mm}", "set-ups.lights.distance")]
    [InlineData("{flash: willow, role: below, distance: 399 mm}", "frame.height")]
    [InlineData("{flash: willow, role: below, distance: 300 mm, offset-right: 25 cm}", "set-ups.lights.offset-right")]
    [InlineData("{flash: willow, role: below, distance: 300 mm, offset-back: -15 cm}", "set-ups.lights.offset-back")]
    public void A_refused_flash_is_a_check_of_its_own_whose_remedy_holds(string second, string key)
    {
        var kit = Kit("300 mm", second, "no");
        var check = Checks(kit).Single(check => !check.Passed);

        check.Kind.Should().Be(PlanCheckKind.Cradle);
        check.Parts.Should().Equal("willow", "pale");
        check.Remedy!.Kind.Should().Be(CheckRemedyKind.MoveFlash);
        check.Remedy.Keys.Should().Contain(key);
        foreach (var move in ((CheckAmount.NearestMoves)check.Remedy.Amount).Choices)
        {
            Checks(Moved(kit, move)).Should().OnlyContain(check => check.Passed, move.ToString());
        }
    }

    /// <summary>A head 600 mm wide goes between legs 580 mm apart nowhere.</summary>
    [Fact]
    public void A_flash_that_fits_nowhere_needs_a_stand_of_its_own()
    {
        var kit = Kit("300 mm", "{flash: willow, role: below, distance: 200 mm}", "no");
        var wide = kit with { Flashes = [.. kit.Flashes.Select(flash => flash.Name == "willow" ? flash with { HeadWidth = Length.FromMillimeters(600) } : flash)] };

        Checks(wide).Single(check => !check.Passed).Remedy.Should().Be(new CheckRemedy(CheckRemedyKind.OwnStand));
    }

    private static IReadOnlyList<PlanCheck> Checks(KitSpec kit) => [.. FrameChecks.Of(FramePlanner.Plan(kit, Panel, new PlanningServices()))];

    private static KitSpec Moved(KitSpec kit, CradleMove move) => move.Kind == CradleMoveKind.RaisePanel
        ? kit with { Frame = kit.Frame with { Height = kit.Frame.Height + move.By } }
        : kit with
        {
            SetUps = [.. kit.SetUps.Select(setUp => setUp.Name != "pale" ? setUp : setUp with
            {
                Lights = [.. setUp.Lights.Select(light => light.Flash == "willow" ? Moved(light, move) : light)],
            })],
        };

    private static LightSpec Moved(LightSpec light, CradleMove move) => move.Kind switch
    {
        CradleMoveKind.Up => light with { Distance = light.Distance - move.By },
        CradleMoveKind.Down => light with { Distance = light.Distance + move.By },
        CradleMoveKind.Left => light with { OffsetRight = light.OffsetRight - move.By },
        CradleMoveKind.Right => light with { OffsetRight = light.OffsetRight + move.By },
        CradleMoveKind.Front => light with { OffsetBack = light.OffsetBack - move.By },
        _ => light with { OffsetBack = light.OffsetBack + move.By },
    };

    [Fact]
    public void Two_flashes_of_one_set_up_get_a_cradle_each_where_their_heads_go_beside_each_other()
    {
        string Second(int right) => FormattableString.Invariant(
            $"{{flash: sedge, role: below, distance: 300 mm, offset-right: -4 cm}}, {{flash: willow, role: below, distance: 300 mm, offset-right: {right} mm}}");

        Frame("430 mm", Second(40)).LowerFlashes.Skip(1).Should().OnlyContain(flash => flash.Support == FlashSupport.Cradle);
        Frame("430 mm", Second(20)).LowerFlashes[2].Fault!.Kind.Should().Be(CradleFaultKind.HeadMeetsAnother, "heads 70 mm wide lie 60 mm apart");
    }

    /// <summary>Sedge 300 g with four cells of 27 g makes 408 g, willow counts as 350 g (what is usual), a dome 25 g; the same flash in two places hangs once.</summary>
    [Theory]
    [InlineData("430 mm", "{flash: sedge, role: below, distance: 430 mm}", 0)]
    [InlineData("300 mm", "{flash: sedge, role: below, distance: 300 mm}", 408)]
    [InlineData("300 mm", "{flash: sedge, role: below, distance: 200 mm}", 408)]
    [InlineData("300 mm", "{flash: willow, role: below, distance: 200 mm}", 758)]
    [InlineData("300 mm", "{flash: willow, role: below, distance: 270 mm}", 408)]
    [InlineData("430 mm", "{flash: willow, role: below, distance: 200 mm, modifier: dome}", 375)]
    public void Every_flash_on_a_cradle_stands_on_the_frame_with_its_cells(string first, string second, double grams)
    {
        var frame = Frame(first, second);

        (frame.StandingMass - frame.Mass - frame.RestMass - Panel.Mass).Grams.Should().BeApproximately(grams, 1e-6);
    }

    /// <summary>The middle of the panel is 300 mm from its left and 200 mm from its front edge, the sheet lies 500 mm over the ground.</summary>
    [Fact]
    public void A_flash_is_measured_from_the_panels_left_and_front_edge()
    {
        var flash = Frame("430 mm", "{flash: willow, role: below, distance: 200 mm, offset-right: 40 mm, offset-back: -30 mm}").LowerFlashes[1];

        (flash.Window - new FramePoint(0.040, -0.030, 0.300)).Norm.Should().BeLessThan(1e-12);
        flash.FromLeft.Millimeters.Should().BeApproximately(340, 1e-9);
        flash.FromFront.Millimeters.Should().BeApproximately(170, 1e-9);
        flash.BelowPanel.Millimeters.Should().BeApproximately(200, 1e-9);
    }

    /// <summary>By hand: windows 300 and 200 mm under a panel 500 mm up, rails 60 mm under them.</summary>
    [Fact]
    public void Rails_of_flashes_at_several_heights_are_measured_from_the_ground_up()
    {
        static IEnumerable<double> Heights(string second) => Frame("200 mm", second).Heights.Where(height => height.Kind == FrameHeightKind.CradleRail).Select(height => Math.Round(height.Height.Millimeters, 3));

        Heights("{flash: sedge, role: below, distance: 300 mm}").Should().Equal(140, 240);
        Heights("{flash: willow, role: below, distance: 200 mm}").Should().Equal([240], "two flashes in one place hang on one rail");
    }

    /// <summary>A sheet of 600 × 400 × 3 mm that weighs 1.2 kg: what its density would have to be for the checks.</summary>
    [Fact]
    public void A_weighed_panel_presses_on_its_rails_with_what_it_weighs()
    {
        var kit = Kit("430 mm", "{flash: sedge, role: below, distance: 430 mm}", "no");
        var (weighed, computed) = (Panel with { Mass = Mass.FromKilograms(1.2) }, Panel with { Mass = Mass.FromKilograms(1.2), MassOrigin = MassOrigin.FromGeometry });
        var frame = FramePlanner.Plan(kit, weighed, new PlanningServices());

        double Density(PanelPlan panel) => FrameLoads.CaseOf(kit, panel, frame.Geometry, frame.StandingMass).Sheet.Density.KilogramsPerCubicMeter;

        Density(weighed).Should().BeApproximately(1.2 / (0.600 * 0.400 * 0.003), 1e-6);
        Density(computed).Should().Be(kit.Panel.Density.KilogramsPerCubicMeter);
    }

    /// <summary>
    /// Side rails of 880 mm carry (12.6 N + 2 N)/2 and themselves, 9.5 N/m, and sag 5·9.5·0.88⁴/(384·10.9) m = 7 mm, over a two-hundredth; those of 380 mm less than
    /// half a millimetre, and cross rails of 580 mm 1.4 mm of the 2.9 mm allowed.
    /// </summary>
    [Theory]
    [InlineData(400, 4)]
    [InlineData(900, 6)]
    public void Legs_stand_under_the_middle_of_rails_that_sag_too_far_without(double depth, int feet)
    {
        var panel = Panel with { RequiredDepth = Length.FromMillimeters(depth), Depth = Length.FromMillimeters(depth), MassOrigin = MassOrigin.FromGeometry };

        FramePlanner.Plan(Kit("430 mm", "{flash: sedge, role: below, distance: 430 mm}", "no"), panel, new PlanningServices())
            .Geometry.Feet.Should().HaveCount(feet);
    }

    /// <summary>By hand: hems of 20 mm at either side and 50 mm round the rail less 10 mm off the ground, on a base of 580 + 20 by 380 + 20 mm: 2·(640 + 440) mm × 540 mm at 120 g/m².</summary>
    [Fact]
    public void Skirts_weigh_the_same_in_the_bag_and_on_the_frame()
    {
        var kit = Kit("430 mm", "{flash: sedge, role: below, distance: 430 mm}", "yes, skirt-areal-mass: 120 g/m²");
        var frame = FramePlanner.Plan(kit, Panel, new PlanningServices());

        var skirts = 2 * (0.640 + 0.440) * 0.540 * 120;
        KitInventory.Of(kit, Panel, frame, frame.Workshop).Single(item => item.Part == StudioPart.Skirts).Mass.Grams.Should().BeApproximately(skirts, 1e-6);
        (frame.StandingMass - frame.Mass - frame.RestMass - Panel.Mass).Grams.Should().BeApproximately(skirts, 1e-6);
    }

    private static FramePlan Frame(string first, string second) => FramePlanner.Plan(Kit(first, second, "no"), Panel, new PlanningServices());

    private static KitSpec Kit(string first, string second, string skirts) => KitText.Read(Yaml
        .Replace("FIRST", first, StringComparison.Ordinal).Replace("SECOND", second, StringComparison.Ordinal).Replace("SKIRTS", skirts, StringComparison.Ordinal)).Kit!;
}
