using StudioKit.Web.Drawing;
using StudioKit.Web.Editing;
using StudioKit.Web.Results;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests.Editing;

/// <summary>What is shown while something of the studio is moved: never an answer to what is asked no more.</summary>
public sealed class MovedStudioTests
{
    private const string Distance = "set-ups[0].lights[0].distance";

    private readonly WaitingEngine _previews = new("preview");

    [Fact]
    public async Task A_preview_that_comes_after_the_hand_took_the_move_back_is_not_shown()
    {
        var (_, moved) = await OpenAsync(_previews);
        _previews.IsHeld = true;
        var moving = moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 300)]);

        await moved.MoveAsync(MovePhase.TakenBack, [new HandleMove(Distance, 300)]);
        _previews.LetOneCome();
        await moving;

        moved.Shown.Should().BeSameAs(moved.Planned);
        moved.IsMoved.Should().BeFalse();
    }

    [Fact]
    public async Task A_preview_of_one_framing_is_not_shown_for_another_that_was_chosen_meanwhile()
    {
        var (_, moved) = await OpenAsync(_previews);
        _previews.IsHeld = true;
        var moving = moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 300)]);
        var other = moved.Planned!.Framings.First(framing => framing.Framing != moved.PlannedFraming!.Framing);

        await moved.ChooseAsync(other.Framing);
        _previews.LetOneCome();
        await moving;

        moved.Framing!.Framing.Should().Be(other.Framing);
        moved.Framing.Darkest.Should().Be(other.Darkest);
    }

    [Fact]
    public async Task A_preview_of_the_plan_before_is_not_shown_over_the_new_one()
    {
        var (desk, moved) = await OpenAsync(_previews);
        _previews.IsHeld = true;
        var moving = moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 300)]);

        await desk.ChangeAsync(kit => kit.Change(kit.Text.Replace("distance: 45 cm", "distance: 40 cm", StringComparison.Ordinal)));
        moved.Follow(desk.Plan!.Hash, desk.Plan.Studios[0]).Should().BeTrue();
        _previews.LetOneCome();
        await moving;

        moved.Shown.Should().BeSameAs(desk.Plan.Studios[0]);
        moved.Shown!.Lights[0].Distance.Should().Be(400);
    }

    [Fact]
    public async Task While_the_hand_moves_each_answer_that_comes_is_shown_and_the_newest_stays()
    {
        var (_, moved) = await OpenAsync(_previews);
        _previews.IsHeld = true;
        var moving = new[] { moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 300)]), moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 350)]) };

        _previews.LetOneCome();
        moved.Shown!.Lights[0].Distance.Should().Be(300);
        _previews.LetOneCome();
        await Task.WhenAll(moving);

        moved.Shown.Lights[0].Distance.Should().Be(350);
    }

    [Fact]
    public async Task What_is_let_go_of_never_takes_the_place_of_a_text_that_was_changed_meanwhile()
    {
        var edits = new WaitingEngine("edit");
        var (desk, moved) = await OpenAsync(edits);
        edits.IsHeld = true;
        var dropping = moved.MoveAsync(MovePhase.Dropped, [new HandleMove(Distance, 300)]);
        var typed = desk.Kit!.Text + "# and windy\n";

        await desk.ChangeAsync(kit => kit.Change(typed));
        edits.LetOneCome();
        await dropping;

        desk.Kit.Text.Should().Be(typed);
    }

    [Fact]
    public async Task The_first_move_of_a_camera_at_its_default_is_written_and_one_undo_takes_the_key_away_again()
    {
        var bare = Asked.Demo().Replace("    camera-pitch: [30°, 60°, 90°]\n", "", StringComparison.Ordinal);
        var (desk, moved) = await OpenAsync(_previews, bare);
        var camera = moved.Planned!.Handles.Single(handle => handle.Kind == HandleKind.CameraPitch);

        await moved.MoveAsync(MovePhase.Moving, [new HandleMove(camera.Key, 48)]);
        moved.Framing!.Map!.Views.Should().ContainSingle().Which.PitchDegrees.Should().Be(48);
        await moved.MoveAsync(MovePhase.Dropped, [new HandleMove(camera.Key, 48)]);

        desk.Kit!.Text.Should().Be(Asked.Demo().Replace("    camera-pitch: [30°, 60°, 90°]\n", "    camera-pitch: 48°\n", StringComparison.Ordinal));
        desk.Kit.Undo();
        desk.Kit.Text.Should().Be(bare);
    }

    [Fact]
    public async Task A_mark_let_go_where_it_stood_changes_nothing()
    {
        var (desk, moved) = await OpenAsync(_previews);

        await moved.MoveAsync(MovePhase.Dropped, [new HandleMove(Distance, 450)]);

        desk.Kit!.CanUndo.Should().BeFalse();
        moved.IsMoved.Should().BeFalse();
    }

    [Fact]
    public async Task A_power_turned_by_hand_stays_turned_when_a_move_is_taken_back()
    {
        var (desk, moved) = await OpenAsync(_previews);
        var lowest = moved.PlannedFraming!.Dial!.Marks.Count - 1;
        await moved.TurnAsync(lowest);
        var turned = moved.Framing!.Darkest.Stops;

        await moved.MoveAsync(MovePhase.Moving, [new HandleMove(Distance, 300)]);
        await moved.MoveAsync(MovePhase.TakenBack, [new HandleMove(Distance, 300)]);

        moved.IsTurned.Should().BeTrue();
        moved.Framing!.Darkest.Stops.Should().Be(turned).And.BeLessThan(moved.PlannedFraming.Darkest.Stops);
        desk.Kit!.CanUndo.Should().BeFalse("a power is set on the flash and not written");
    }

    [Fact]
    public async Task A_framing_that_is_chosen_comes_with_its_map_and_the_one_before_stays_until_then()
    {
        var maps = new WaitingEngine("map");
        var (desk, moved) = await OpenAsync(maps);
        var (hardest, other) = (moved.PlannedFraming!, moved.Planned!.Framings.First(framing => framing.Map is null));
        maps.IsHeld = true;

        var choosing = moved.ChooseAsync(other.Framing);
        moved.Framing.Should().BeSameAs(hardest);
        maps.LetOneCome();
        await choosing;

        moved.Framing!.Framing.Should().Be(other.Framing);
        moved.Framing.Map!.Margins.Should().HaveCount(moved.Planned.Columns * moved.Planned.Rows).And.NotEqual(hardest.Map!.Margins);

        // It stays in hand when the kit is planned anew, with the map of the plan before until its own is there.
        var before = moved.Framing.Map;
        await desk.ChangeAsync(kit => kit.Change(kit.Text.Replace("distance: 45 cm", "distance: 40 cm", StringComparison.Ordinal)));
        moved.Follow(desk.Plan!.Hash, desk.Plan.Studios[0]);
        moved.Framing!.Framing.Should().Be(other.Framing);
        moved.Framing.Map.Should().BeSameAs(before);
        maps.LetOneCome();
        moved.Framing!.Map!.Margins.Should().NotEqual(before.Margins);
    }

    [Fact]
    public async Task A_map_that_comes_after_another_framing_was_chosen_is_not_shown_for_it()
    {
        var maps = new WaitingEngine("map");
        var (_, moved) = await OpenAsync(maps);
        var hardest = moved.PlannedFraming!;
        var other = moved.Planned!.Framings.First(framing => framing.Map is null);
        maps.IsHeld = true;
        var choosing = moved.ChooseAsync(other.Framing);

        await moved.ChooseAsync(hardest.Framing);
        maps.LetOneCome();
        await choosing;

        moved.Framing.Should().Be(hardest);
    }

    private static async Task<(Desk Desk, MovedStudio Moved)> OpenAsync(WaitingEngine engine, string? text = null)
    {
        var desk = new Desk(engine);
        await desk.OpenAsync(new KitDocument("fen-edge.yaml", text ?? Asked.Demo()));
        var moved = new MovedStudio(engine, desk);
        moved.Follow(desk.Plan!.Hash, desk.Plan.Studios[0]);
        return (desk, moved);
    }
}
