using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

public sealed class MovingTests
{
    // What a preview may be wrong by, beside margins that are told to a tenth of a stop (argued, no source).
    private const double HalfATenth = 0.05;

    private const string Distance = "set-ups[0].lights[0].distance";

    private readonly Asked _engine = new();

    [Fact]
    public void A_preview_of_nothing_moved_is_the_plan()
    {
        var (plan, studio) = Planned();
        var framing = studio.Framings[0];

        var preview = Preview(plan, framing.Framing);

        var map = _engine.For(EngineQuestions.Map, new MapRequest(plan.Hash, studio.SetUp, framing.Framing)).Map!;
        Single(preview).Map!.Margins.Should().Equal(map.Margins);
        Single(preview).Power.Should().Be(framing.Power);
        preview.Card.Should().BeEquivalentTo(plan.Cards.First(card => card.SetUp == studio.SetUp && card.Framing == framing.Framing));
    }

    [Theory]
    [InlineData("set-ups[0].lights[0].offset-right", 60)]
    [InlineData("set-ups[0].lights[0].offset-back", -40)]
    [InlineData(Distance, 380)]
    [InlineData("set-ups[0].lights[1].distance", 600)]
    [InlineData("set-ups[0].camera-pitch[1]", 50)]
    [InlineData("panel.width", 640)]
    [InlineData("panel.depth", 420)]
    public void A_preview_tells_within_half_a_tenth_of_a_stop_what_a_plan_of_the_changed_kit_tells(string key, double value)
    {
        var (plan, studio) = Planned();
        var framing = studio.Framings[^1].Framing;
        var edit = Edit(key, $"{value} {(key.Contains("pitch", StringComparison.Ordinal) ? "°" : "mm")}");

        var (previewed, exact) = (Single(Preview(plan, framing, new HandleMove(key, value))), _engine.Plan(edit.Text).Studios[0].Framings.First(other => other.Framing == framing));

        (previewed.Darkest.Stops - exact.Darkest.Stops).Should().BeInRange(-HalfATenth, HalfATenth);
        (previewed.Brightest.Stops - exact.Brightest.Stops).Should().BeInRange(-HalfATenth, HalfATenth);
        previewed.Power.Should().Be(exact.Power);
        previewed.Pitches.Should().Equal(exact.Pitches);
    }

    [Fact]
    public void A_flash_moved_right_brightens_the_right_of_the_panel_against_its_left()
    {
        var (plan, studio) = Planned();

        var margins = Single(Preview(plan, studio.Framings[0].Framing, new HandleMove("set-ups[0].lights[0].offset-right", 100))).Map!.Margins;

        // Midway to the back, two points in from the edges, which lie on the rails.
        var row = studio.Rows / 2 * studio.Columns;
        margins[row + studio.Columns - 3].Should().BeGreaterThan(margins[row + 2] + 0.3);
    }

    [Fact]
    public void A_flash_moved_through_the_skirts_is_told_as_impossible_and_lights_nothing()
    {
        var (plan, studio) = Planned();

        var preview = Preview(plan, studio.Framings[0].Framing, new HandleMove("panel.width", 60));

        preview.Studio!.Framings.Should().BeEmpty();
        preview.Studio.Problems.Should().ContainMatch("*through a skirt*");
    }

    [Theory]
    [InlineData("set-ups[0].lights[0].offset-right")]
    [InlineData("set-ups[0].lights[0].offset-back")]
    public void A_flash_at_the_end_of_its_way_stands_clear_of_the_skirts(string key)
    {
        var (plan, studio) = Planned();
        var handle = studio.Handles.Single(handle => handle.Key == key);

        Preview(plan, studio.Framings[0].Framing, new HandleMove(key, handle.Least)).Studio!.Problems.Should().BeEmpty();
        Preview(plan, studio.Framings[0].Framing, new HandleMove(key, handle.Most)).Studio!.Problems.Should().BeEmpty();
    }

    [Fact]
    public void Nothing_is_previewed_of_a_kit_that_was_not_planned() =>
        _engine.For(EngineQuestions.Preview, new PreviewRequest("no such hash", "white", "reed 55 1:4", [])).Studio.Should().BeNull();

    [Fact]
    public void A_moved_distance_is_written_in_the_unit_that_the_kit_has_it_in_and_its_comments_stay()
    {
        var edit = Edit(Distance, "475 mm");

        edit.Refusal.Should().BeEmpty();
        edit.Text.Should().Be(Asked.Demo().Replace("role: below, distance: 45 cm", "role: below, distance: 47.5 cm", StringComparison.Ordinal));
        (Asked.Demo()[..edit.Start] + edit.NewText + Asked.Demo()[(edit.Start + edit.Length)..]).Should().Be(edit.Text);
    }

    [Theory]
    [InlineData("", "    camera-pitch: 50°\n")]
    [InlineData("    camera-pitch: [60°] # as on the test day\n", "    camera-pitch: [50°] # as on the test day\n")]
    [InlineData("    camera-pitch: 60 deg # as on the test day\n", "    camera-pitch: 50 deg # as on the test day\n")]
    [InlineData("    camera-pitch:\n      - 60° # as on the test day\n", "    camera-pitch:\n      - 50° # as on the test day\n")]
    public void A_first_move_of_the_camera_writes_its_angle_where_the_kit_leaves_it_to_its_default_and_touches_nothing_else(string before, string after)
    {
        const string Written = "    camera-pitch: [30°, 60°, 90°]\n";
        Asked.Demo().Should().Contain(Written);
        var text = Asked.Demo().Replace(Written, before, StringComparison.Ordinal);
        var studio = _engine.Plan(text).Studios[0];
        var handle = studio.Handles.Should().ContainSingle(handle => handle.Kind == HandleKind.CameraPitch).Subject;
        handle.Value.Should().Be(60);

        var edit = _engine.For(EngineQuestions.Edit, new EditRequest(text, [new KitChangeLine(handle.Key, "50°")]));

        edit.Refusal.Should().BeEmpty();
        edit.Text.Should().Be(Asked.Demo().Replace(Written, after, StringComparison.Ordinal));
        _engine.Plan(edit.Text).Studios[0].Handles.Should().ContainSingle(handle => handle.Kind == HandleKind.CameraPitch).Which.Value.Should().Be(50);
    }

    [Fact]
    public void How_well_a_moved_length_is_known_stays_written_behind_it()
    {
        var doubtful = Asked.Demo().Replace("role: below, distance: 45 cm", "role: below, distance: 45 cm ± 2 cm", StringComparison.Ordinal);

        _engine.For(EngineQuestions.Edit, new EditRequest(doubtful, [new KitChangeLine(Distance, "500 mm")])).Text.Should().Contain("distance: 50 cm ± 2 cm");
    }

    [Fact]
    public void Two_values_of_one_move_are_written_together()
    {
        var edit = _engine.For(EngineQuestions.Edit, new EditRequest(
            Asked.Demo(), [new KitChangeLine("set-ups[0].lights[0].offset-right", "35 mm"), new KitChangeLine("set-ups[0].lights[0].offset-back", "-20 mm")]));

        var handles = _engine.Plan(edit.Text).Studios[0].Handles;
        handles.First(handle => handle.Key.EndsWith("offset-right", StringComparison.Ordinal)).Value.Should().Be(35);
        handles.First(handle => handle.Key.EndsWith("offset-back", StringComparison.Ordinal)).Value.Should().Be(-20);
    }

    [Theory]
    [InlineData("35 mm", "-20 mm", "35 mm right of the middle", "20 mm front of the middle")]
    [InlineData("-35 mm", "20 mm", "35 mm left of the middle", "20 mm back of the middle")]
    [InlineData("0 mm", "0 mm", "in the middle", "in the middle")]
    public void A_flash_off_the_middle_is_told_to_stand_on_the_side_where_the_picture_has_it(string right, string back, string aside, string along)
    {
        var edit = _engine.For(EngineQuestions.Edit, new EditRequest(
            Asked.Demo(), [new KitChangeLine("set-ups[0].lights[0].offset-right", right), new KitChangeLine("set-ups[0].lights[0].offset-back", back)]));

        var studio = _engine.Plan(edit.Text).Studios[0];
        studio.Handles.Single(handle => handle.Kind == HandleKind.FlashRight).Text.Should().Be(aside);
        studio.Handles.Single(handle => handle.Kind == HandleKind.FlashBack).Text.Should().Be(along);
        studio.Lights[0].Centre.X.CompareTo(studio.PanelWidth / 2).Should().Be(aside.Contains("right", StringComparison.Ordinal) ? 1 : aside.Contains("left", StringComparison.Ordinal) ? -1 : 0);
    }

    [Fact]
    public void A_value_that_has_no_place_is_refused_in_a_sentence_and_nothing_is_written()
    {
        var edit = _engine.For(EngineQuestions.Edit, new EditRequest(Asked.Demo(), [new KitChangeLine(Distance, "50 cm"), new KitChangeLine("set-ups[9].distance", "50 cm")]));

        edit.Text.Should().Be(Asked.Demo());
        edit.Refusal.Should().NotBeEmpty();
    }

    [Fact]
    public void A_place_in_the_frame_has_the_margin_that_the_map_shows_there_and_an_account_that_comes_to_it()
    {
        var (plan, studio) = Planned();
        var framing = studio.Framings[0];

        var point = _engine.For(EngineQuestions.Point, new PointRequest(plan.Hash, studio.SetUp, framing.Framing, framing.Darkest.Place));

        point.Total.Should().Be(framing.Darkest.Text);
        point.Framings.Select(line => line.Framing).Should().Equal(studio.Framings.Select(seen => seen.Framing));
        point.Account.Sum(line => double.Parse(line.Stops, System.Globalization.CultureInfo.InvariantCulture)).Should().BeApproximately(framing.Darkest.Stops, 0.005 * point.Account.Count, "each line is rounded to a hundredth");
    }

    [Fact]
    public void A_corner_that_no_frame_shows_is_told_to_be_out_of_the_frame()
    {
        var (plan, studio) = Planned();

        var point = _engine.For(EngineQuestions.Point, new PointRequest(plan.Hash, studio.SetUp, studio.Framings[^1].Framing, new Spot(1, 1)));

        point.Framings[^1].IsSeen.Should().BeFalse();
        point.Said.Should().Contain("out of the frame");
    }

    // The rails of fen-edge are pipes of 25 mm along the panel's edges.
    [Theory]
    [InlineData(1, 200, true)]
    [InlineData(24, 200, true)]
    [InlineData(300, 399, true)]
    [InlineData(30, 200, false)]
    [InlineData(300, 200, false)]
    public void A_place_over_a_rail_is_told_to_be_dark_at_any_power(double fromLeft, double fromFront, bool isOverRail)
    {
        var (plan, studio) = Planned();

        var point = _engine.For(EngineQuestions.Point, new PointRequest(plan.Hash, studio.SetUp, studio.Framings[0].Framing, new Spot(fromLeft, fromFront)));

        point.Said.Contains("over a pipe of the frame: dark there at any power", StringComparison.Ordinal).Should().Be(isOverRail);
        point.Total.EndsWith("over a pipe of the frame", StringComparison.Ordinal).Should().Be(isOverRail);
    }

    [Fact]
    public void The_panel_from_above_shows_where_it_lies_on_its_four_rails()
    {
        var studio = Planned().Studio;

        studio.Covered.Should().HaveCount(4);
        studio.Covered.Should().ContainSingle(strip => strip.Max(corner => corner.X) == 25).Which.Should().BeEquivalentTo(new Spot[] { new(0, 0), new(25, 0), new(0, 400), new(25, 400) });
    }

    [Fact]
    public void The_maps_bands_begin_where_the_kit_and_the_plan_say()
    {
        var bands = Planned().Studio.Framings[0].Bands;

        bands.Select(band => band.Kind).Should().Equal(MarginBandKind.Grey, MarginBandKind.Tight, MarginBandKind.White, MarginBandKind.Veil);
        bands[1].From.Should().Be(0);
        bands[2].From.Should().BeApproximately(1.0 / 3, 1e-9, "the kit asks for a third of a stop");
    }

    private (PlanAnswer Plan, StudioPicture Studio) Planned()
    {
        var plan = _engine.Plan(Asked.Demo());
        return (plan, plan.Studios[0]);
    }

    private EditAnswer Edit(string key, string value) => _engine.For(EngineQuestions.Edit, new EditRequest(Asked.Demo(), [new KitChangeLine(key, value)]));

    private PreviewAnswer Preview(PlanAnswer plan, string framing, params HandleMove[] moves) =>
        _engine.For(EngineQuestions.Preview, new PreviewRequest(plan.Hash, plan.Studios[0].SetUp, framing, moves));

    private static SeenFraming Single(PreviewAnswer preview) => preview.Studio!.Framings.Should().ContainSingle().Subject;
}
