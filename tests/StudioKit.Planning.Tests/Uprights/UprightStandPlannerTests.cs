using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Tests.Uprights;

/// <summary>Pieces, cuts, shopping and pack of what holds upright sheets, worked out by hand.</summary>
public sealed class UprightStandPlannerTests
{
    private const string Staked = "width: 500 mm, height: 400 mm, over-ground: 10 cm, stake-depth: 25 cm";

    /// <summary>10 cm to the lower edge, 40 cm of sheet, 25 cm in the ground: 750 mm, of two pieces with the 2 mm of a coupling's stop between them.</summary>
    [Fact]
    public void Stakes_are_cut_to_sheet_lower_edge_and_depth_and_split_for_the_pack()
    {
        var stand = StandKit.Only(Staked);

        stand.PoleLength.Millimeters.Should().Be(750);
        stand.Pieces.Should().Equal(new UprightPiece(UprightPieceRole.Pole, "pole of screen", Length.FromMillimeters(374), 4));
        stand.Fittings.Select(fitting => (fitting.Kind, fitting.Count)).Should().Equal((FittingKind.Coupling, 2));
        stand.CouplingHeights.Single().Millimeters.Should().BeApproximately(125, 1e-9);
    }

    /// <summary>Leaning by 20° the lower edge lies 100/cos 20° = 106.42 mm up the pole: 756.42 mm, cut in half millimetres.</summary>
    [Fact]
    public void Leaning_stakes_are_longer() => StandKit.Only($"{Staked}, lean: 20°").PoleLength.Millimeters.Should().Be(756.5);

    /// <summary>
    /// Feet of 40 cm: each half stops 11 mm short of the pole's middle in its tee and goes to the cap's floor, 189 mm. A pole starts over half a pipe and the tee's 11 mm: 40 + 300 − 10 − 11 = 319 mm.
    /// 20 mm pipe of 1.5 mm wall weighs π·18.5·1.5 mm²·1400 kg/m³ = 122.05 g/m, or as catalogued: what one metre of it weighs is taken from the frame's own pipe.
    /// </summary>
    [Fact]
    public void Feet_are_cut_to_their_tees_and_caps()
    {
        var stand = StandKit.Only("carrier: feet, width: 400 mm, height: 300 mm");

        stand.Pieces.Should().Equal(
            new UprightPiece(UprightPieceRole.Pole, "pole of screen", Length.FromMillimeters(319), 2),
            new UprightPiece(UprightPieceRole.HalfFoot, "half foot of screen", Length.FromMillimeters(189), 4));
        stand.Fittings.Select(fitting => (fitting.Kind, fitting.Count)).Should().Equal((FittingKind.Tee, 2), (FittingKind.Cap, 4));
        var metres = (2 * 0.319) + (4 * 0.189);
        stand.CarrierMass.Grams.Should().BeApproximately((metres * GramsPerMetre) + (2 * 21) + (4 * 8), 0.01);
    }

    /// <summary>Over two whole poles 380 mm apart that leave 10 mm beside their middles at either edge, a sheet of 400 mm has no room left at 20 °C.</summary>
    [Fact]
    public void Poles_stand_so_that_the_sheets_edges_end_flush_with_them()
    {
        var stand = StandKit.Only("carrier: feet, width: 400 mm, height: 300 mm", more: "site: {temperature: 20 °C, sun-warming: 0 K}");

        stand.PoleSpacing.Millimeters.Should().Be(380);
        stand.PlayPerEdge.Millimeters.Should().BeApproximately(0, 1e-9);
    }

    /// <summary>A sheet whose side edges are 600 mm high has clips 20 mm off its corners and at most 20 cm, or a third of the 180 mm between its poles, apart: ten over 560 mm.</summary>
    [Fact]
    public void Clips_are_near_enough_for_the_edge_to_stay_straight()
    {
        var stand = StandKit.Only("width: 200 mm, height: 600 mm, over-ground: 10 cm", more: "site: {temperature: 20 °C, sun-warming: 0 K}");

        stand.ClipsPerPole.Should().Be(11);
        stand.FirstClip.Millimeters.Should().BeApproximately(20, 1e-9);
        stand.ClipSpacing.Millimeters.Should().BeApproximately(56, 1e-9);
        stand.SheetClips.Should().Be(24, "eleven on each pole, and one under each lower corner");
    }

    [Fact]
    public void A_sheet_that_stands_on_the_ground_needs_no_clips_under_it() => StandKit.Only("width: 400 mm, height: 300 mm").CornersOnClips.Should().BeFalse();

    /// <summary>Cords at 45° from 50 cm up reach pegs 50 cm off; 50·√2 cm and 40 cm for the knots make 110.7 cm each, 4.43 m in all: five metres.</summary>
    [Fact]
    public void Cords_and_pegs_are_bought_and_packed()
    {
        var plan = KitText.Plan(StandKit.Text($"  - {{name: screen, {Staked}, cord-pegs: 4, peg-hold: 3 kg}}", StandKit.Growing("screen")));
        var lines = plan.Workshop!.Shopping.ToDictionary(line => line.Item, line => line.Count, StringComparer.Ordinal);

        plan.Workshop.Uprights[0].PegDistance.Millimeters.Should().BeApproximately(500, 1e-9);
        lines["ground peg, 180 mm long, for screen"].Should().Be(4);
        lines["bright cord, 3 mm thick, in pieces of 110.5 cm: 4, for screen, metre"].Should().Be(5);
        plan.Pack.Items.Where(item => item.Upright == "screen").Select(item => item.Part).Should().StartWith([StudioPart.UprightSheet, StudioPart.UprightPoles, StudioPart.Hardware]);
        plan.Pack.Items.Where(item => item.Upright == "screen").Should().Contain(item => item.Name == "screen: cords to the pegs" && item.Count == 4).And.Contain(item => item.Name == "screen: pegs" && item.Count == 4);
    }

    [Fact]
    public void Without_a_frame_pipe_and_sheet_are_still_cut_bought_and_packed()
    {
        var plan = KitText.Plan(StandKit.Text($"  - {{name: screen, {Staked}}}", StandKit.Growing("screen"), "stock: {lengths: [{length: 3 m, price: 4}], clip-price: 0.50}"));

        plan.Frame.Should().BeNull();
        plan.Workshop!.PipeCuts.Bars.SelectMany(bar => bar.Marks).Select(mark => mark.Label).Should().Equal(Enumerable.Repeat("pole of screen", 4));
        plan.Workshop.SheetParts.Should().ContainSingle(part => part.Kind == SheetPartKind.Upright && part.Width.Millimeters == 500 && part.Height.Millimeters == 400);
        plan.Workshop.Shopping.Single(line => line.Item.StartsWith("spring clip from sheet to pipe", StringComparison.Ordinal)).Total.Should().Be(0.5m * plan.Workshop.Uprights[0].SheetClips);
        plan.Pack.Items.Single(item => item.Part == StudioPart.UprightSheet).Size.Should().Be(new BoxSize(Length.FromMillimeters(500), Length.FromMillimeters(400), Length.FromMillimeters(3)));
        plan.Checks.Select(check => check.Kind).Should().Contain([PlanCheckKind.Stock, PlanCheckKind.UprightTipping]);
    }

    [Fact]
    public void Beside_a_frame_all_are_cut_from_one_stock()
    {
        var plan = KitText.Plan(StandKit.Text(
            "  - {name: screen, carrier: frame, width: 300 mm, height: 250 mm}", StandKit.OnPanel("screen"), "panel: {width: 400 mm, depth: 300 mm}\nstock: {lengths: [{length: 3 m, price: 4}], sheets: [{size: 800 mm x 600 mm, price: 20}]}"));

        plan.Frame!.Workshop.Should().BeSameAs(plan.Workshop);
        plan.Frame.PipeCuts.Bars.SelectMany(bar => bar.Marks).Should().Contain(mark => mark.Label == "pole of screen").And.Contain(mark => mark.Label == "bar of screen").And.Contain(mark => mark.Label == "A");
        plan.Frame.SheetCuts.Sheets.Should().ContainSingle().Which.Panels.Should().HaveCount(2, "panel and upright sheet are of one material and thickness");
    }

    /// <summary>Sheets of another thickness than the panel's are not on the panel's stock.</summary>
    [Fact]
    public void A_thicker_upright_sheet_is_bought_cut_to_size()
    {
        var plan = KitText.Plan(StandKit.Text(
            "  - {name: screen, carrier: frame, width: 300 mm, height: 250 mm, sheet: {thickness: 4 mm}}", StandKit.OnPanel("screen"), "panel: {width: 400 mm, depth: 300 mm}\nstock: {sheets: [{size: 800 mm x 600 mm}]}"));

        plan.Workshop!.SheetCuts.Sheets.Select(sheet => sheet.StockLabel).Should().Contain("white opal acrylic, 4 mm, cut to 300 × 250 mm");
    }

    /// <summary>The gust presses on the sheet with 1.8·q·A at its height over the ground, half a metre and more up; the frame alone presents a few pipes.</summary>
    [Fact]
    public void A_frame_that_holds_a_sheet_tips_sooner_and_the_sheet_comes_down_before_it_does()
    {
        var bare = Plan("");
        var sailing = Plan("    upright: screen\n");
        var stand = sailing.Workshop!.Uprights.Single();
        var tipping = Tipping(sailing);

        var added = Value(tipping.Demand) - Value(Tipping(bare).Demand);
        var byHand = 1.5 * 1.8 * (1.225 / 2 * Math.Pow(3 * Wind.GustFactor, 2)) * 0.3 * 0.25 * (sailing.Frame!.Geometry.PanelHeight.Meters + 0.125);
        added.Should().BeApproximately(byHand, 0.06 * byHand, "the bare poles catch a little, and the lower edge lies over the panel and not over its underside");
        (stand.HighestGust / stand.Wind.Gust).Should().BeLessThanOrEqualTo(1 / Math.Sqrt(tipping.Ratio!.Value) + 1e-9);
        stand.Weakest.Should().Be(StructuralCheckKind.Tipping);

        static Plan Plan(string upright) => KitText.Plan(StandKit.Text(
            "  - {name: screen, carrier: frame, width: 300 mm, height: 250 mm}",
            "  - name: level\n    kind: white-background\n" + upright
                + $"    lights: [{(upright.Length > 0 ? "{flash: sedge, role: behind, distance: 30 cm}, " : "")}" + "{flash: willow, role: above, distance: 40 cm}, {flash: willow, role: below, distance: 30 cm}]",
            "panel: {width: 400 mm, depth: 300 mm}\nsite: {wind: 3 m/s}"));
    }

    /// <summary>WMO's scale: force 4 goes up to 7.9 m/s, force 5 to 10.7 m/s.</summary>
    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(7.89, 4)]
    [InlineData(7.9, 5)]
    [InlineData(10.6, 5)]
    [InlineData(40, 12)]
    public void A_sheet_comes_down_at_the_first_force_whose_winds_it_does_not_all_stand_in(double mean, int force) =>
        UprightStandPlanner.TakeDownFrom(Speed.FromMetersPerSecond(mean)).Should().Be(force);

    [Fact]
    public void A_subject_where_it_grows_needs_the_sheet_and_not_the_studio()
    {
        PackedItem[] items = [Item("panel", StudioPart.Panel, null), Item("screen, sheet", StudioPart.UprightSheet, "screen"), Item("other, sheet", StudioPart.UprightSheet, "other")];

        new GearUse("growing", "1:2", true, [], [], false, "screen").Needs(items).Should().Equal("screen, sheet");
        new GearUse("level", "1:2", true, [], [], true, "other").Needs(items).Should().Equal("panel", "other, sheet");
        new GearUse("white", "1:2", true, [], [], true, null).Needs(items).Should().Equal("panel");

        static PackedItem Item(string name, StudioPart part, string? upright) =>
            new() { Name = name, Count = 1, Mass = Mass.FromGrams(100), Origin = MassOrigin.Weighed, Stage = Kits.Carrying.PackItemStage.SettingUp, Part = part, Upright = upright };
    }

    private static double GramsPerMetre =>
        PipeMass.PerMetre(StudioKit.Planning.Studio.Frames.FrameDesign.PipeOf(KitText.Plan(StandKit.Text($"  - {{name: screen, {Staked}}}", StandKit.Growing("screen"))).Kit.Frame.Pipe)) * 1000;

    private static PlanCheck Tipping(Plan plan) => plan.Checks.Single(check => check.Kind == PlanCheckKind.Tipping);

    private static double Value(CheckAmount amount) => (double)((CheckAmount.Measure)amount).Value.Value;
}
