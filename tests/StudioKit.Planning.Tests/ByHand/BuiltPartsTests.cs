using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Tables;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Planning.Tables;
using UnitsNet;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What is cut, carried and stands, summed and measured again.</summary>
public sealed class BuiltPartsTests
{
    private const string Square = "width: 400 mm, depth: 400 mm";

    // Frame and panel; a flash in a cradle too, with its four cells: 300 g + 4 · 27 g.
    [Theory]
    [InlineData("45 cm", 0)]
    [InlineData("25 cm", 408)]
    public void What_stands_is_frame_panel_and_the_flash_that_the_frame_holds(string distance, double flash)
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("distance: 45 cm", $"distance: {distance}", StringComparison.Ordinal),
            one: "cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4",
            panel: $"{Square}, mass: 900 g",
            frame: "mass: 1500 g");

        plan.Frame!.StandingMass.Grams.Should().BeApproximately(1500 + 900 + flash, 1e-6);
    }

    /// <summary>
    /// Rails stand 20 mm inside a panel of 600 × 400 mm; fittings with 11 mm of take-off and 16 mm of socket hide 27 mm at each end: strips of 2 × 526 and 2 × 326 mm, 1.704 m,
    /// 10 × 4 mm of rubber of 1200 kg/m³: 81.8 g, two metres to buy.
    /// </summary>
    [Theory]
    [InlineData("all-edges", 4, 2, 81.792)]
    [InlineData("front-and-back", 2, 2, 50.496)]
    public void Strips_under_the_edges_are_bought_carried_and_stuck_on(string rests, int strips, int metres, double grams)
    {
        var plan = HandKit.Plan(
            "stock: {pad-price: 0.80}\n" + HandKit.White, panel: "width: 600 mm, depth: 400 mm",
            frame: $"panel-rests: {rests}, pipe: pvc-u-20x1.5, fittings: {{part: pvc-u-20, elbow: {{take-off: 11 mm, socket-depth: 16 mm}}, tee: {{take-off: 11 mm, socket-depth: 16 mm}}, corner: {{take-off: 11 mm, socket-depth: 16 mm}}}}");
        var ledge = plan.Frame!.Geometry.Ledge;

        ledge.Rests.Should().HaveCount(strips);
        plan.Frame.Shopping.Single(line => line.Item.StartsWith("pad strip", StringComparison.Ordinal)).Should().Match<ShoppingLine>(line => line.Count == metres && line.Total == 0.80m * metres);
        plan.Pack.Items.Single(item => item.Part == StudioPart.Rests).Mass.Grams.Should().BeApproximately(grams, 0.001);
        (plan.Frame.StandingMass - plan.Frame.Mass - plan.Panel.Mass).Grams.Should().BeApproximately(grams, 0.001);
        ledge.Rests.Should().OnlyContain(rest => plan.Frame.Assembly.OfType<AssemblyStep.LayStrips>().Single().Ledge.Rests.Contains(rest));
    }

    // A piece may be as long as the longest bag, and every pipe of the frame is.
    [Fact]
    public void Pipes_may_be_as_long_as_the_longest_bag()
    {
        var plan = HandKit.Plan(
            "pack: {bags: [{name: long, inside: 900 mm x 300 mm x 200 mm}, {name: short, inside: 300 mm x 200 mm x 150 mm}]}\n" + HandKit.White, panel: Square);

        plan.Frame!.Geometry.Members.Should().OnlyContain(member => member.CutLength.Millimeters < 900);
        plan.Frame.Geometry.Members.Should().Contain(member => member.CutLength.Millimeters > 300);
        var bundle = plan.Pack.Items.Single(item => item.Part == StudioPart.Frame).Size!;
        bundle.Longest.Should().Be(plan.Frame.Geometry.Members.Max(member => member.CutLength));
        // Round pipes side by side need a square of their diameters at least.
        (bundle.Middle * bundle.Shortest).SquareMillimeters.Should().BeGreaterThanOrEqualTo(
            plan.Frame.Geometry.Members.Count * Math.Pow(plan.Frame.PipeDiameter.Millimeters, 2) - 1e-6);
    }

    // Cloth of 0.1 kg/m² round a panel of 400 mm × 400 mm, 500 mm high: 80 g without hems, a third more at most with them.
    [Fact]
    public void Skirts_weigh_what_four_sides_of_cloth_do()
    {
        var plan = HandKit.Plan(HandKit.White, panel: $"{Square}, skirts: yes, skirt-reflectance: 0");

        plan.Pack.Items.Single(item => item.Part == StudioPart.Skirts).Mass.Grams.Should().BeInRange(80, 110);
    }

    // Over the legs' outer faces with a hem of 20 mm at either side; 50 mm more at the top to go round the rail, 10 mm off the ground.
    [Fact]
    public void Skirts_are_cut_with_their_hems()
    {
        var frame = HandKit.Plan(HandKit.White, panel: $"{Square}, skirts: yes, skirt-reflectance: 0").Frame!;
        var skirts = frame.SheetParts.Where(part => part.Label.StartsWith("skirt", StringComparison.Ordinal)).ToList();

        skirts.Sum(part => part.Count).Should().Be(4);
        skirts[0].Width.Millimeters.Should().BeApproximately((frame.Geometry.BaseWidth + frame.PipeDiameter).Millimeters + 40, 1e-6);
        skirts[1].Width.Millimeters.Should().BeApproximately((frame.Geometry.BaseDepth + frame.PipeDiameter).Millimeters + 40, 1e-6);
        skirts.Should().OnlyContain(part => Math.Abs(part.Height.Millimeters - (frame.Geometry.PanelHeight.Millimeters + 40)) < 1e-6);
    }

    // A rectangle too small by a third of a millimetre cuts a corner off the pattern: up to the next whole one.
    [Theory]
    [InlineData(200, 150)]
    [InlineData(210, 140)]
    [InlineData(220, 130)]
    [InlineData(230, 120)]
    [InlineData(240, 110)]
    public void The_body_of_a_folded_softbox_is_cut_from_the_next_whole_millimetre_up(int width, int height)
    {
        var frame = HandKit.Plan(
            FormattableString.Invariant($"modifiers: [{{name: small, kind: softbox, size: {width} mm x {height} mm, made-from: white card}}]\n")
            + HandKit.White.Replace("distance: 40 cm", "distance: 40 cm, modifier: small", StringComparison.Ordinal), panel: Square).Frame!;
        var (box, body) = (frame.Softboxes.Single(), frame.SheetParts.Single(part => part.Label == "small body"));

        (body.Width - box.PatternWidth).Millimeters.Should().BeInRange(-1e-6, 1);
        (body.Height - box.PatternHeight).Millimeters.Should().BeInRange(-1e-6, 1);
        body.Width.Millimeters.Should().BeApproximately(Math.Round(body.Width.Millimeters), 1e-9);
    }

    // A pipe stops 2 mm short of its socket's floor.
    [Fact]
    public void Pipes_are_marked_where_they_stop_short_of_the_socket()
    {
        var (full, gap) = (HandKit.Plan(HandKit.White, panel: Square).Frame!, HandKit.Plan(HandKit.White, panel: Square, frame: "insertion-gap: 2 mm").Frame!);

        gap.InsertionDepths.Should().OnlyContain(depth => Math.Abs((full.InsertionDepths[depth.Key] - depth.Value).Millimeters - 2) < 1e-9);
    }

    // 3 kg on a spring balance are 29.4 N (standard gravity, 9.80665 m/s²); each of three studios has its own pegs.
    [Fact]
    public void Pegs_hold_in_newtons_and_are_bought_for_every_studio()
    {
        var frame = HandKit.Plan(HandKit.White + "stock: {studios: 3}\n", panel: Square, frame: "pegs: {count: 4, hold: 3 kg}").Frame!;

        frame.PegHold.Newtons.Should().BeApproximately(29.41995, 0.005);
        frame.Shopping.Single(line => line.Item.Contains("peg", StringComparison.Ordinal)).Count.Should().Be(12);
    }

    // Squared at one end by 5 mm, a saw cut of 2 mm after each piece.
    [Fact]
    public void Bars_are_squared_and_every_cut_takes_its_kerf()
    {
        var frame = HandKit.Plan(HandKit.White + "stock: {lengths: [{length: 2 m}], kerf: 2 mm, trim: 5 mm}\n", panel: Square).Frame!;

        foreach (var bar in frame.PipeCuts.Bars)
        {
            bar.Marks.Zip(bar.Marks.Skip(1)).Should().OnlyContain(pair => Math.Abs((pair.Second.Start - pair.First.End).Millimeters - 2) < 1e-6);
            (bar.StockLength.Millimeters - bar.Marks.Sum(mark => mark.Length.Millimeters) - bar.Offcut.Millimeters).Should().BeGreaterThanOrEqualTo(5 + (2 * (bar.Marks.Count - 1)) - 1e-6);
        }
    }

    [Fact]
    public void The_cut_lists_table_gives_start_before_end()
    {
        var plan = HandKit.Plan(HandKit.White + "stock: {lengths: [{length: 2 m}], kerf: 2 mm}\n", panel: Square).Frame!.PipeCuts;

        foreach (var row in Rows(CutPlanTables.Of(plan)))
        {
            (Number(row["endMm"]) - Number(row["startMm"])).Should().BeApproximately(Number(row["lengthMm"]), 0.002);
        }
    }

    [Fact]
    public void A_sheets_table_keeps_width_and_height_apart()
    {
        var part = new PlacedPanel("skirt", Length.FromMillimeters(10), Length.FromMillimeters(20), Length.FromMillimeters(300), Length.FromMillimeters(70), Turned: false);
        var plan = HandKit.Plan(HandKit.White, panel: Square).Frame!.SheetCuts;
        var row = Rows(CutPlanTables.Of(plan with { Sheets = [plan.Sheets[0] with { Panels = [part] }] })).Single();

        (row["xMm"], row["yMm"], row["widthMm"], row["heightMm"]).Should().Be(("10", "20", "300", "70"));
    }

    [Fact]
    public void A_table_of_sheet_pieces_is_read_as_it_is_headed()
    {
        var pieces = CutTables.SheetPieces("p.csv", "label,width,height,turn\nA,300 mm,70 mm,yes\nB,300 mm,70 mm,no\nC,300 mm,70 mm,\n").Rows;

        pieces.Should().OnlyContain(piece => Math.Abs(piece.Width.Millimeters - 300) < 1e-9 && Math.Abs(piece.Height.Millimeters - 70) < 1e-9);
        pieces.Select(piece => piece.MayTurn).Should().Equal(true, false, true);
    }

    [Fact]
    public void The_shopping_table_multiplies_count_and_price()
    {
        var frame = HandKit.Plan(HandKit.White + "stock: {lengths: [{length: 1 m, price: 2.50}]}\n", panel: Square).Frame!;
        var priced = Rows(ShoppingTable.Of(frame.Workshop)).Where(row => row["priceEach"].Length > 0 && Number(row["count"]) > 1).ToList();

        priced.Should().NotBeEmpty();
        priced.Should().OnlyContain(row => Math.Abs((Number(row["count"]) * Number(row["priceEach"])) - Number(row["price"])) < 1e-6);
    }

    private static IEnumerable<Dictionary<string, string>> Rows(string csv)
    {
        var rows = CsvText.Read(csv);
        return rows.Skip(1).Select(row => rows[0].Zip(row).ToDictionary(pair => pair.First.Text, pair => pair.Second.Text, StringComparer.Ordinal));
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
