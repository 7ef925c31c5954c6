using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;
using StudioKit.Web.Tests.Engine;
using StudioKit.Web.Tests.Storage;

namespace StudioKit.Web.Tests.Editing;

/// <summary>A search for designs beside other work on the kit, and what is done with what it found.</summary>
public sealed class DesignDeskTests
{
    private static readonly string Kit = DesignsTests.Kit[..DesignsTests.Kit.IndexOf("explore:", StringComparison.Ordinal)].Replace("spare-sets: 1", "spare-sets: 2", StringComparison.Ordinal)
        + """
        explore:
          measures: [mass, cards]
          choices:
            - {name: spare, key: "flashes[one].spare-sets", from: 0, to: 3, step: 1}

        """;

    private readonly WaitingEngine _engine = new("search");
    private readonly SharedDevice _device = new();
    private readonly DeviceTab _tab;
    private readonly Desk _desk;
    private readonly KitKeeper _keeper;
    private readonly DesignDesk _designs;
    private readonly Pins _pins;
    private readonly TakenDesigns _taken;

    public DesignDeskTests()
    {
        _tab = _device.Tab();
        _desk = new Desk(_engine);
        _keeper = new KitKeeper(_desk, _tab, _tab);
        _designs = new DesignDesk(_engine, _desk);
        _pins = new Pins(_desk, _keeper);
        _taken = new TakenDesigns(_engine, _desk, _designs, _tab, _pins);
    }

    [Fact]
    public async Task Somebody_who_types_during_a_search_is_answered_and_the_search_says_that_it_is_of_the_kit_before()
    {
        await OpenAsync();
        _engine.IsHeld = true;
        var search = _designs.SearchAsync();
        _engine.LetOneCome();
        _engine.LetOneCome();
        _designs.IsOutdated.Should().BeFalse();

        await _desk.ChangeAsync(kit => kit.Change(Kit.Replace("f/16", "f/11", StringComparison.Ordinal)));

        _desk.Step.Should().BeEmpty("the typed kit is planned while the search waits");
        _designs.IsSearching.Should().BeTrue();
        _designs.IsOutdated.Should().BeTrue();
        await LetAllComeAsync(search);
        _designs.Found!.Designs.Should().ContainSingle();
        _designs.IsOutdated.Should().BeTrue();
        await _desk.ChangeAsync(kit => kit.Undo());
        _designs.IsOutdated.Should().BeFalse("it is the kit that was searched again");
    }

    [Fact]
    public async Task A_search_that_is_stopped_shows_what_was_found_until_then()
    {
        await OpenAsync();
        _engine.IsHeld = true;
        var search = _designs.SearchAsync();
        _engine.LetOneCome();
        _designs.Stop();

        await LetAllComeAsync(search);

        _designs.Progress!.Tried.Should().BeLessThan(4);
        _designs.Found!.Designs.Should().NotBeEmpty();
        _designs.Chosen.Should().Be(_designs.Found.Designs[0]);
        _designs.IsSearching.Should().BeFalse();
    }

    [Fact]
    public async Task A_design_put_into_the_kit_is_one_change_that_can_be_taken_back()
    {
        await OpenAsync();
        await _designs.SearchAsync();

        await _taken.TakeAsync(_designs.Chosen!);

        _desk.Kit!.Text.Should().Be(Kit.Replace("spare-sets: 2", "spare-sets: 0", StringComparison.Ordinal), "cells weigh, and the comment stays");
        _taken.IsTaken.Should().BeTrue();
        _taken.Said.Should().Contain("design 1");
        await _desk.ChangeAsync(kit => kit.Undo());
        _desk.Kit.Text.Should().Be(Kit);
        (_taken.IsTaken, _taken.Said).Should().Be((false, ""));
    }

    [Fact]
    public async Task A_design_of_the_kit_as_it_was_is_not_written_over_what_was_typed_since()
    {
        await OpenAsync();
        await _designs.SearchAsync();
        var typed = Kit.Replace("f/16", "f/11", StringComparison.Ordinal);
        await _desk.ChangeAsync(kit => kit.Change(typed));

        await _taken.TakeAsync(_designs.Chosen!);

        _desk.Kit!.Text.Should().Be(typed);
        _taken.Said.Should().Contain("changed since the search");
    }

    [Fact]
    public async Task A_design_kept_as_a_kit_of_its_own_leaves_the_kit_in_hand_and_takes_its_parts_along()
    {
        await OpenAsync();
        _desk.Kit!.Beside = new KitBeside(new Dictionary<string, string> { ["pipes/reed-25"] = "name: reed pipe" }, [new PinnedState("Pin 1", Kit, 1)]);
        await _designs.SearchAsync();

        await _taken.KeepAsync(_designs.Chosen!, "lighter");

        _desk.Kit.Text.Should().Be(Kit);
        var kept = (await _tab.ListAsync()).Single(kit => kit.Name == "lighter.yaml");
        (await _tab.TextAsync(kept.Id)).Should().Contain("spare-sets: 0").And.Contain("# weighed in spring");
        var beside = KitBeside.Read(await _tab.BesideAsync(kept.Id));
        (beside.Parts.Count, beside.Pins.Count).Should().Be((1, 0), "pins are states of another kit");
        _taken.Said.Should().Contain("lighter.yaml");
    }

    [Fact]
    public async Task A_pinned_design_is_a_state_beside_the_kit_and_its_plan_can_be_held_beside_the_kits()
    {
        await OpenAsync();
        await _designs.SearchAsync();

        await _taken.PinAsync(_designs.Chosen!);
        await _taken.CompareAsync(_designs.Chosen!);

        _pins.States.Should().ContainSingle().Which.Text.Should().Contain("spare-sets: 0");
        _pins.States[0].Name.Should().StartWith("Pin 1: design 1, ");
        var plain = await _engine.AskAsync(EngineQuestions.Compare, new CompareRequest(Kit, _pins.States[0].Text, "sallow.yaml"));
        _taken.Compared.Should().BeEquivalentTo(plain);
        _taken.Compared!.Mass.Should().Contain("lighter");
    }

    [Fact]
    public async Task A_worker_that_fails_during_a_search_is_told_of_and_the_search_is_over()
    {
        var desk = new Desk(_engine);
        await desk.OpenAsync(new KitDocument("sallow.yaml", Kit));
        var designs = new DesignDesk(new Failing(), desk);

        await designs.LookAsync();
        designs.Fault.Should().Contain("out of memory");
        await designs.SearchAsync();

        designs.Fault.Should().Contain("out of memory");
        (designs.IsSearching, designs.Found).Should().Be((false, null));
    }

    [Fact]
    public async Task What_somebody_compares_by_stays_when_the_kit_changes_as_long_as_it_has_figures()
    {
        await OpenAsync();
        await _designs.LookAsync();
        _designs.Measures.Should().BeEquivalentTo("mass", "cards");
        _designs.Compare("cards", isCompared: false);
        _designs.Compare("pieces", isCompared: true);

        await _desk.ChangeAsync(kit => kit.Change(Kit.Replace("f/16", "f/11", StringComparison.Ordinal)));
        await _designs.LookAsync();

        _designs.Measures.Should().BeEquivalentTo("mass", "pieces");
        await _desk.OpenAsync(new KitDocument("other.yaml", Kit));
        await _designs.LookAsync();
        _designs.Measures.Should().BeEquivalentTo(["mass", "cards"], "another kit is compared by what it says itself");
    }

    private async Task OpenAsync()
    {
        await _desk.OpenAsync(new KitDocument("sallow.yaml", Kit));
        await _designs.LookAsync();
    }

    private async Task LetAllComeAsync(Task search)
    {
        while (!search.IsCompleted)
        {
            _engine.LetOneCome();
        }

        await search;
    }

    private sealed class Failing : IEngine
    {
        public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
            where TAnswer : class => Task.FromException<TAnswer?>(new EngineFaultException("out of memory"));

        public Task SaveAsync(string name) => Task.CompletedTask;
    }
}
