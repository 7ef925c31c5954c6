using StudioKit.Physics.Packing;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Tests.Frames;
using UnitsNet;

namespace StudioKit.Planning.Tests.Packing;

public sealed class PackPlannerTests
{
    // Every part is given its mass in the kit, so that the sum can be done by hand.
    private const string Weighed = """
        kit: Weighed part by part
        camera: {name: body, sensor: 36 mm x 24 mm, mass: 700 g}
        lenses:
          - {name: reed 60, focal-length: 60 mm, magnifications: [1:2], mass: 300 g}
        accessories:
          extension-tubes: [{name: tube, length: 20 mm, mass: 80 g}]
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", mass: 310 g, cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2000 mAh, mass: 27 g}, cell-count: 4, spare-sets: 2}
        modifiers:
          - {name: dome, kind: dome, mass: 25 g}
        panel: {width: 500 mm, depth: 400 mm, underside-reflectance: 0, mass: 720 g, skirts: no}
        site: {ground-reflectance: 0}
        frame: {mass: 1450 g}
        pack:
          bags:
            - {name: big, inside: 620 mm x 420 mm x 220 mm, mass: 1.9 kg, carrier: Ada}
            - {name: small, inside: 420 mm x 280 mm x 160 mm, mass: 1.2 kg, carrier: Bo}
          people:
            - {name: Ada, body-mass: 60 kg}
            - {name: Bo, body-mass: 60 kg}
          items:
            - {name: water, mass: 1 kg, count: 2}
            - {name: tubs, mass: 40 g, count: 6}
        set-ups:
          - name: white
            kind: white-background
            lights: [{flash: sedge, role: below, distance: 40 cm}]

        """;

    /// <summary>Hand sum: body 700, lens 300, tube 80, flash 310, its cells 4 · 27 = 108, spare 8 · 27 = 216, dome 25, panel 720, frame 1450,
    /// water 2 · 1000 = 2000, tubs 6 · 40 = 240: 6149 g; bags 1900 + 1200 = 3100 g. Small parts that nobody weighed: four clips of 15 g, two cloths of 500 × 400 mm at 100 g/m²,
    /// 20 g to wipe with, spanner and level of 60 g each: 240 g; pins and feet were weighed with the frame. 9489 g in all.</summary>
    [Fact]
    public void A_kit_weighed_part_by_part_comes_to_its_hand_sum()
    {
        var pack = KitText.Plan(Weighed).Pack;

        pack.Items.Should().HaveCount(11 + 5);
        pack.Weighed.Grams.Should().BeApproximately(6149, 1e-6);
        pack.FromGeometry.Grams.Should().Be(0);
        pack.Assumed.Grams.Should().BeApproximately(240, 1e-6);
        pack.Total.Grams.Should().BeApproximately(9489, 1e-6);
        pack.Bags.Sum(bag => bag.Mass.Grams).Should().BeApproximately(9489, 1e-6);
        pack.People.Sum(person => person.Mass.Grams).Should().BeApproximately(9489, 1e-6);
    }

    /// <summary>Three millimetres of acrylic, 500 × 400 mm, at 1190 kg/m³: 0.003 · 0.5 · 0.4 · 1190 = 0.714 kg.</summary>
    [Fact]
    public void A_mass_that_was_not_weighed_says_where_it_comes_from()
    {
        var yaml = Weighed.Replace("mass: 720 g, skirts: no", "thickness: 3 mm, density: 1190 kg/m³, skirts: no", StringComparison.Ordinal)
            .Replace(", magnifications: [1:2], mass: 300 g", ", magnifications: [1:2]", StringComparison.Ordinal);

        var pack = KitText.Plan(yaml).Pack;

        pack.FromGeometry.Grams.Should().BeApproximately(714, 1e-6);
        pack.Items.Single(item => item.Part == StudioPart.Panel).Origin.Should().Be(MassOrigin.FromGeometry);
        pack.Items.Single(item => item.Name == "reed 60").Origin.Should().Be(MassOrigin.Assumed);
        pack.Notes.Should().Contain(note => note.StartsWith("Weigh these", StringComparison.Ordinal) && note.Contains("reed 60", StringComparison.Ordinal));
    }

    [Fact]
    public void No_other_sharing_out_loads_the_most_loaded_person_less()
    {
        var pack = KitText.Plan(Weighed).Pack;

        var movable = pack.Items.Where(item => item is { InFlash: false, Part: null or StudioPart.Hardware }).Select(item => item.Mass.Grams + (item.Name == "sedge" ? 108 : 0)).ToList();
        var fixedInBig = 1900.0 + 720 + 1450;

        pack.ProvenMostEven.Should().BeTrue();
        pack.People.Max(person => person.Share).Should().BeApproximately(LeastOfTheGreatest(movable, fixedInBig, 1200) / 60_000, 1e-5);
    }

    [Fact]
    public void Things_with_a_bag_of_their_own_stay_there_and_cells_travel_in_their_flash()
    {
        var pack = KitText.Demo("tall-stand.yaml").Pack;

        pack.Items.Single(item => item.Name == "snake hook").Should().Match<PackedItem>(item => item.Bag == "long duffel" && item.BagGiven);
        pack.Items.Where(item => item.InFlash).Should().OnlyContain(cells => cells.Bag == pack.Items.Single(item => item.Name == cells.CellsOf).Bag);
    }

    [Fact]
    public void In_a_bag_what_is_needed_last_lies_lowest_and_fragile_things_above_heavy_ones()
    {
        var pack = KitText.Demo("fen-edge.yaml").Pack;

        foreach (var bag in pack.Bags)
        {
            var layers = bag.FromBottom.Select(name => pack.Items.Single(item => item.Name == name)).ToList();
            layers.Zip(layers.Skip(1)).Should().OnlyContain(pair => pair.First.Stage > pair.Second.Stage || (pair.First.Stage == pair.Second.Stage && !(pair.First.Fragile && !pair.Second.Fragile)));
        }
    }

    /// <summary>
    /// Cross rails of 580 − 22 = 558 mm are longer than a bag of 520 mm, but its back of 520 × 300 mm is 600 mm from corner to corner; a pipe 20 mm thick loses
    /// under 20 mm of that at either end.
    /// </summary>
    [Fact]
    public void Pipes_that_go_in_from_corner_to_corner_are_among_the_bags_layers_and_fill_it()
    {
        const string pack =
            """
            pack:
              bags: [{name: rucksack, inside: 520 mm x 300 mm x 200 mm, mass: 1.4 kg}]
            """;
        var plan = PlannedKit.Of("kind: table\n  longest-piece: 600 mm", more: pack);
        var frame = plan.Pack.Items.Single(item => item.Part == StudioPart.Frame);
        var inside = plan.Pack.Items.Where(item => item is { Outside: false, InFlash: false, Size: not null }).ToList();

        plan.Pack.LongPieces.Single(piece => piece.Part == StudioPart.Frame).Placement.Should().Be(LongItemPlacement.CornerToCorner);
        frame.Outside.Should().BeFalse();
        var bag = plan.Pack.Bags.Single();
        bag.FromBottom.Should().Contain(frame.Name);
        bag.VolumeShare.Should().BeApproximately(inside.Sum(item => item.Count * item.Size!.Volume.Liters) / (0.7 * 5.2 * 3 * 2), 1e-6);
    }

    [Fact]
    public void A_panel_wider_than_every_bag_is_strapped_outside_and_said_to_be()
    {
        var plan = KitText.Demo("fen-edge.yaml");

        var panel = plan.Pack.Items.Single(item => item.Part == StudioPart.Panel);
        panel.Outside.Should().BeTrue();
        panel.Bag.Should().Be("frame pack");
        var check = plan.Checks.Single(check => check.Kind == PlanCheckKind.LongThing && check.Parts.SequenceEqual(["panel", "frame pack"]));
        check.Passed.Should().BeTrue("600 mm are within a tenth of 620 mm");
        check.Capacity.Should().BeOfType<CheckAmount.LongRoom>().Which.Placement.Should().Be(LongItemPlacement.StrappedOutside);
        var caveat = check.Caveats.Should().ContainSingle().Which.Should().BeOfType<CheckCaveat.OfLongPiece>().Which.Caveat;
        caveat.Kind.Should().Be(LongPieceCaveatKind.LargerThanBack);
        (caveat.Size!.Longest.Millimeters, caveat.Size.Middle.Millimeters).Should().Be((600, 400));
    }

    // E33 of the rod formula: a rod of 26.7 mm goes into 600 × 300 mm up to 650.1 mm (worked by hand from the rectangle bound).
    [Theory]
    [InlineData("590 mm", LongItemPlacement.AlongBag)]
    [InlineData("640 mm", LongItemPlacement.CornerToCorner)]
    [InlineData("655 mm", LongItemPlacement.StrappedOutside)]
    public void The_longest_pipe_goes_along_the_bag_then_corner_to_corner_then_outside(string length, LongItemPlacement where)
    {
        var yaml = Weighed.Replace("inside: 620 mm x 420 mm x 220 mm", "inside: 600 mm x 300 mm x 220 mm", StringComparison.Ordinal)
            .Replace("panel: {width: 500 mm, depth: 400 mm", "panel: {width: 500 mm, depth: 280 mm", StringComparison.Ordinal)
            .Replace("frame: {mass: 1450 g}", "frame: {kind: table, height: 1 m, longest-piece: 2 m, mass: 1450 g, pipe: {part: pvc-u-25x1.9, outside-diameter: 26.7 mm}}", StringComparison.Ordinal);
        var plan = KitText.Plan(yaml);
        var frame = plan.Frame!;
        QuantityOf(length, out var wanted);
        var stretched = frame with { Geometry = frame.Geometry with { Members = [.. frame.Geometry.Members.Select(member => member with { CutLength = wanted })] } };

        var pieces = StudioKit.Planning.Packing.LongPieces.Of(plan.Kit, plan.Panel, stretched, [], plan.Pack.Items);
        var checks = StudioKit.Planning.Checks.PackChecks.Of(plan with { Pack = plan.Pack with { LongPieces = pieces } });

        checks.Single(check => check.Kind == PlanCheckKind.LongThing && check.Parts.SequenceEqual(["longest pipe", "big"]))
            .Capacity.Should().BeOfType<CheckAmount.LongRoom>().Which.Placement.Should().Be(where);

        // The panel lies flat in the bag whatever the pipes do, and says nothing of them.
        pieces.Single(piece => piece.Part == StudioPart.Panel).Placement.Should().Be(LongItemPlacement.AlongBag);
        var strappedOn = plan.Pack.Items.Single(item => item.Part == StudioPart.Frame) with { Outside = true };
        StudioKit.Planning.Packing.LongPieces.GoesInside(pieces, strappedOn).Should().Be(where != LongItemPlacement.StrappedOutside);
    }

    [Fact]
    public void Cells_say_energy_rule_source_and_date()
    {
        // 7.4 V × 20 Ah = 148 Wh, between 100 and 160 Wh: only with the airline's approval.
        var yaml = Weighed.Replace("nickel-metal-hydride, voltage: 1.2 V, capacity: 2000 mAh", "lithium-ion, voltage: 7.4 V, capacity: 20 Ah", StringComparison.Ordinal);

        var plan = KitText.Plan(yaml);
        var stock = plan.Pack.Cells.Single();

        stock.EnergyEach.WattHours.Should().BeApproximately(148, 1e-9);
        stock.EnergyTotal.WattHours.Should().BeApproximately(12 * 148, 1e-6);
        stock.Air.Class.Should().Be(StudioKit.Physics.Packing.AirCellClass.AskAirline);
        plan.Pack.Notes.Should().Contain(note => note.Contains("check your carrier", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_to_carry_and_nobody_to_carry_it_still_make_a_plan()
    {
        var pack = KitText.Plan(KitText.Bare).Pack;

        pack.Items.Should().HaveCount(2);
        pack.Bags.Should().BeEmpty();
        pack.Total.Grams.Should().BeApproximately(1000, 1e-9);
        pack.LeaveAtHome.Should().BeNull();
    }

    private static void QuantityOf(string text, out Length length) => StudioKit.Kits.QuantityText.TryLength(text, out length, out _);

    // Every one of the 2ⁿ ways.
    private static double LeastOfTheGreatest(List<double> grams, double first, double second)
    {
        var best = double.PositiveInfinity;
        for (var ways = 0; ways < 1 << grams.Count; ways++)
        {
            var inFirst = grams.Where((_, i) => (ways >> i & 1) == 1).Sum();
            best = Math.Min(best, Math.Max(first + inFirst, second + grams.Sum() - inFirst));
        }

        return best;
    }
}
