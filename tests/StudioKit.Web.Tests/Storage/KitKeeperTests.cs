using StudioKit.Web.Editing;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Tests.Storage;

/// <summary>What the page promises about kits, on a device in memory: nothing is lost, nothing is replaced by another tab, and it is said where something is not saved.</summary>
public sealed class KitKeeperTests
{
    private readonly SharedDevice _device = new();

    [Fact]
    public async Task A_newcomers_first_kit_is_kept_at_once()
    {
        var tab = await OpenTab.OnAsync(_device);

        tab.Keeper.State.Should().Be(KeepingState.Saved);
        _device.Texts.Should().Equal(new Dictionary<string, string> { ["fen.yaml"] = "fen" });
    }

    [Fact]
    public async Task Every_change_is_on_the_device_before_anything_else_is_asked_for()
    {
        var tab = await OpenTab.OnAsync(_device);

        await tab.WriteAsync("fen, wetter");

        _device.Texts["fen.yaml"].Should().Be("fen, wetter");
        tab.Keeper.State.Should().Be(KeepingState.Saved);
    }

    [Fact]
    public async Task A_slow_write_of_the_kit_before_says_nothing_of_the_kit_in_hand()
    {
        var tab = await OpenTab.OnAsync(_device);
        var slow = new TaskCompletionSource();
        tab.Own.Slow = slow.Task;
        var writing = tab.WriteAsync("fen, wetter");
        await tab.Keeper.AddAsync("heath.yaml", "heath");

        slow.SetResult();
        await writing;

        tab.Keeper.State.Should().Be(KeepingState.Saved);
        tab.Keeper.IsUnsaved.Should().BeFalse("all of the heath is on the device");
        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "fen, wetter", ["heath.yaml"] = "heath" });
    }

    [Fact]
    public async Task A_tab_that_is_lost_loses_nothing_and_the_next_one_goes_on_with_it()
    {
        var lost = await OpenTab.OnAsync(_device);
        await lost.WriteAsync("fen, wetter");
        _device.Lose(lost.Own);

        var next = await OpenTab.OnAsync(_device);

        next.Text.Should().Be("fen, wetter");
        next.Keeper.State.Should().Be(KeepingState.Saved);
    }

    [Fact]
    public async Task A_second_tab_of_a_kit_says_that_another_works_on_it_and_saves_nothing_of_its_own()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);

        await second.WriteAsync("second");
        await first.WriteAsync("first");

        second.Keeper.State.Should().Be(KeepingState.Elsewhere);
        second.Own.IsGuarded.Should().BeTrue("something in it is not saved");
        second.Text.Should().Be("second", "what was written stays in sight");
        _device.Texts.Should().Equal(new Dictionary<string, string> { ["fen.yaml"] = "first" });
    }

    [Fact]
    public async Task A_second_tab_that_changed_nothing_shows_what_the_first_one_writes()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);

        await first.WriteAsync("first");

        second.Text.Should().Be("first");
    }

    [Fact]
    public async Task A_tab_that_takes_over_has_the_newest_state_and_the_other_one_saves_no_more()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);
        await first.WriteAsync("first");

        await second.Keeper.TakeOverAsync();
        await second.WriteAsync("second");
        await first.WriteAsync("late");

        first.Keeper.State.Should().Be(KeepingState.Elsewhere);
        second.Keeper.State.Should().Be(KeepingState.Saved);
        _device.Texts.Should().Equal(new Dictionary<string, string> { ["fen.yaml"] = "second" });
    }

    [Fact]
    public async Task Who_takes_over_with_changes_of_their_own_has_them_as_a_kit_of_its_own()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);
        await second.WriteAsync("second");
        await first.WriteAsync("first");

        await second.Keeper.TakeOverAsync();

        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "first", ["fen (2).yaml"] = "second" });
        second.Keeper.Name.Should().Be("fen (2).yaml");
        second.Notices.Should().ContainSingle(notice => notice.Kind == KeepingNoticeKind.KeptAsCopy);
    }

    [Fact]
    public async Task When_the_first_tab_is_closed_the_second_one_saves()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);
        await second.WriteAsync("second");

        _device.Lose(first.Own);

        second.Keeper.State.Should().Be(KeepingState.Saved);
        _device.Texts.Should().Equal(new Dictionary<string, string> { ["fen.yaml"] = "second" });
    }

    [Fact]
    public async Task A_copy_leaves_the_kit_to_the_other_tab()
    {
        var first = await OpenTab.OnAsync(_device);
        var second = await OpenTab.OnAsync(_device);

        await second.Keeper.CopyAsync();
        await second.WriteAsync("copy");
        await first.WriteAsync("first");

        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "first", ["fen (2).yaml"] = "copy" });
    }

    /// <summary>Where the browser has no locks, the state that a write was made from still decides.</summary>
    [Fact]
    public async Task A_late_write_never_replaces_a_newer_one()
    {
        var tab = await OpenTab.OnAsync(_device);
        var other = _device.Tab();
        await other.LoadAsync(tab.Keeper.Id);
        await other.SaveAsync(tab.Keeper.Id, "newer");

        await tab.WriteAsync("late");

        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "newer", ["fen (2).yaml"] = "late" });
    }

    [Fact]
    public async Task Where_there_is_no_room_the_kit_stays_in_hand_and_it_is_said_until_it_can_be_saved()
    {
        var tab = await OpenTab.OnAsync(_device);
        _device.Refusal = KeepingTrouble.Full;
        await tab.WriteAsync("fen, wetter");
        var (state, trouble, guarded) = (tab.Keeper.State, tab.Keeper.Trouble, tab.Own.IsGuarded);

        _device.Refusal = null;
        await tab.Keeper.RetryAsync();

        (state, trouble, guarded).Should().Be((KeepingState.NotSaved, KeepingTrouble.Full, true));
        (tab.Keeper.State, tab.Own.IsGuarded).Should().Be((KeepingState.Saved, false));
        _device.Texts["fen.yaml"].Should().Be("fen, wetter");
    }

    [Fact]
    public async Task Kits_of_a_newer_page_are_left_alone_and_the_page_still_works()
    {
        _device.Add("moth.yaml", "of the future");
        _device.Refusal = KeepingTrouble.NewerPage;

        var tab = await OpenTab.OnAsync(_device);
        await tab.WriteAsync("fen, wetter");

        (tab.Keeper.State, tab.Keeper.Trouble).Should().Be((KeepingState.NotSaved, KeepingTrouble.NewerPage));
        tab.Text.Should().Be("fen, wetter");
        _device.Texts.Should().Equal(new Dictionary<string, string> { ["moth.yaml"] = "of the future" });
    }

    [Fact]
    public async Task A_kit_over_which_the_page_died_is_not_opened_again_by_itself_and_can_be_opened_by_hand()
    {
        var first = await OpenTab.OnAsync(_device);
        _ = first.WriteAsync(OpenTab.Deadly);
        _device.Lose(first.Own);
        var dying = await OpenTab.OnAsync(_device);
        _device.Lose(dying.Own);

        var next = await OpenTab.OnAsync(_device);

        next.Desk.Kit.Should().BeNull();
        next.Notices.Should().ContainSingle(notice => notice.Kind == KeepingNoticeKind.DiedOver && notice.Name == "fen.yaml");
        _device.Texts["fen.yaml"].Should().Be(OpenTab.Deadly, "the kit stays as it was");
    }

    [Fact]
    public async Task A_kit_that_is_thrown_away_is_taken_back_by_a_change()
    {
        var tab = await OpenTab.OnAsync(_device);
        await tab.Keeper.ThrowAwayAsync(tab.Keeper.Id);
        var state = tab.Keeper.State;

        await tab.WriteAsync("fen, wetter");

        state.Should().Be(KeepingState.ThrownAway);
        _device.Texts["fen.yaml"].Should().Be("fen, wetter");
    }

    [Fact]
    public async Task A_kit_that_was_cleared_away_under_the_page_is_kept_anew()
    {
        var tab = await OpenTab.OnAsync(_device);
        _device.Remove(tab.Keeper.Id);

        await tab.WriteAsync("fen, wetter");

        _device.Texts["fen.yaml"].Should().Be("fen, wetter");
        tab.Keeper.State.Should().Be(KeepingState.Saved);
    }

    [Fact]
    public async Task A_kit_that_another_part_of_the_page_puts_on_the_desk_is_kept_as_well()
    {
        var tab = await OpenTab.OnAsync(_device);

        await tab.Desk.OpenAsync(new KitDocument("moth.yaml", "moth"));
        await tab.WriteAsync("moth, darker");

        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "fen", ["moth.yaml"] = "moth, darker" });
    }
}
