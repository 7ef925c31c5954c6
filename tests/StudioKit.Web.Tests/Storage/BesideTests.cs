using System.Text;
using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Outdoors;
using StudioKit.Web.Results;
using StudioKit.Web.Storage;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests.Storage;

/// <summary>Parts, pinned states and corrections that lie beside a kit: they come in with it, are kept with it and go with it. The worker's own room answers, without a browser.</summary>
public sealed class BesideTests
{
    private const string Pipe = "name: reed pipe\noutside-diameter: 25 mm\nwall: 1.9 mm\nsource: measured with a caliper\n";

    private static readonly string Own = Asked.Demo().Replace("pipe: pvc-u-25x1.25", "pipe: reed-25", StringComparison.Ordinal);

    [Fact]
    public async Task A_kit_and_its_part_opened_together_are_planned_together()
    {
        var tab = new Tab(new SharedDevice());

        var notices = await tab.Door.OpenAsync([File("reed-25.yaml", Pipe), File("fen.yaml", Own)]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.Opened);
        tab.Desk.Plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
        tab.Desk.Kit!.Beside.Parts.Should().ContainKey("pipes/reed-25").WhoseValue.Should().Be(Pipe);
    }

    [Fact]
    public async Task A_kit_and_its_measured_light_distribution_are_planned_together()
    {
        var tab = new Tab(new SharedDevice());
        const string Head = "TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 0\n";

        await tab.Door.OpenAsync([File("sedge.ies", Head), File("fen.yaml", Asked.Demo().Replace("head: 72 mm x 42 mm", "head: 72 mm x 42 mm\n    light-distribution: sedge.ies", StringComparison.Ordinal))]);

        tab.Desk.Plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
        tab.Desk.Kit!.Beside.Parts.Should().ContainKey("light-distributions/sedge").WhoseValue.Should().Be(Head);
    }

    [Fact]
    public async Task Both_are_there_again_after_a_reload()
    {
        var device = new SharedDevice();
        await new Tab(device).Door.OpenAsync([File("fen.yaml", Own), File("reed-25.yaml", Pipe)]);

        var next = new Tab(device);
        await next.Keeper.StartAsync(() => Task.FromResult(("other.yaml", "kit: Other")));

        next.Desk.Plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
        next.Desk.Plan.MissingParts.Should().BeEmpty();
    }

    [Fact]
    public async Task A_kit_whose_part_is_not_here_says_which_and_takes_it_afterwards()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Own)]);
        tab.Desk.Plan!.MissingParts.Should().Equal("pipes/reed-25");

        var notice = await tab.Door.OpenPartAsync("pipes/reed-25", File("whatever.yaml", Pipe));

        notice.Kind.Should().Be(KeepingNoticeKind.PartTaken);
        tab.Desk.Plan!.MissingParts.Should().BeEmpty();
        tab.Desk.Plan.Verdict.Standing.Should().NotBe(Standing.Unread);
    }

    [Fact]
    public async Task A_part_opened_later_by_its_name_goes_to_the_kit_in_hand()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Own)]);

        (await tab.Door.OpenAsync([File("reed-25.yaml", Pipe)])).Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.PartTaken);
        (await tab.Door.OpenAsync([File("sallow.yaml", Pipe)])).Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.PartUnnamed);
        (await tab.Door.OpenAsync([File("reed-25.yaml", Pipe + "# another\n")])).Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.PartOther);
        tab.Desk.Kit!.Beside.Parts["pipes/reed-25"].Should().Be(Pipe);
    }

    [Fact]
    public async Task Kits_of_an_archive_take_the_parts_of_their_own_folder()
    {
        var tab = new Tab(new SharedDevice());
        var other = Pipe.Replace("1.9 mm", "2.3 mm", StringComparison.Ordinal);

        await tab.Door.OpenAsync(
        [
            File("reed-25.yaml", Pipe, "fen/parts/pipes/reed-25.yaml"), File("fen.yaml", Own, "fen/fen.yaml"),
            File("reed-25.yaml", other, "heath/parts/pipes/reed-25.yaml"), File("heath.yaml", Own, "heath/heath.yaml"),
        ]);

        tab.Device.All.Select(kit => (kit.Kit.Name, Wall: KitBeside.Read(kit.Kit.Beside).Parts["pipes/reed-25"].Contains("2.3 mm", StringComparison.Ordinal)))
            .Should().Equal(("fen.yaml", false), ("heath.yaml", true));
    }

    [Fact]
    public async Task A_part_that_names_another_brings_it_along()
    {
        var tab = new Tab(new SharedDevice());

        await tab.Door.OpenAsync([File("fen.yaml", Own), File("reed-25.yaml", "part: stem-25\nwall: 1.9 mm\nsource: measured\n"), File("stem-25.yaml", Pipe)]);

        tab.Desk.Kit!.Beside.Parts.Keys.Should().BeEquivalentTo("pipes/reed-25", "pipes/stem-25");
        tab.Desk.Plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
    }

    [Fact]
    public async Task Another_kit_does_not_see_the_parts_of_the_one_before()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Own), File("reed-25.yaml", Pipe)]);

        await tab.Door.OpenAsync([File("other.yaml", Own + "# another\n")]);

        tab.Desk.Plan!.MissingParts.Should().Equal("pipes/reed-25");
    }

    [Fact]
    public async Task The_same_part_with_another_text_makes_another_kit_of_the_same_text()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Own), File("reed-25.yaml", Pipe)]);

        var notices = await tab.Door.OpenAsync([File("fen.yaml", Own), File("reed-25.yaml", Pipe.Replace("1.9 mm", "2.3 mm", StringComparison.Ordinal))]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.NameTaken);
        tab.Device.All.Should().HaveCount(2);
    }

    [Fact]
    public async Task Pins_survive_a_reload_and_go_with_their_kit()
    {
        var device = new SharedDevice();
        var tab = new Tab(device);
        await tab.Keeper.AddAsync("fen.yaml", Asked.Demo());
        await tab.Pins.AddAsync("carried 9 kg");
        await tab.Keeper.AddAsync("bog.yaml", Asked.Demo() + "# bog\n");
        tab.Pins.States.Should().BeEmpty("pins are a kit's own");

        var next = new Tab(device);
        await next.Keeper.OpenAsync(device.All.First().Kit.Id);

        var pin = next.Pins.States.Should().ContainSingle().Subject;
        pin.Should().Be(new PinnedState("Pin 1: carried 9 kg", Asked.Demo(), 1));
        await next.Pins.AddAsync("carried 8 kg");
        next.Pins.States[^1].Number.Should().Be(2);
        await next.Pins.RemoveAsync(1);
        new Tab(device).Should().NotBeNull();
        KitBeside.Read(device.All.First().Kit.Beside).Pins.Select(state => state.Number).Should().Equal(2);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no json")]
    [InlineData("[1, 2]")]
    [InlineData("{\"pins\": 5}")]
    [InlineData("{\"parts\": null, \"pins\": null}")]
    [InlineData("{\"pins\": [null, {\"name\": null, \"text\": null, \"number\": 0}], \"parts\": {\"no-kind\": \"x\", \"pipes/reed\": null}}")]
    public async Task What_is_damaged_beside_a_kit_is_dropped_and_the_kit_opens(string kept)
    {
        var device = new SharedDevice();
        var kit = device.Add("fen.yaml", Asked.Demo(), kept);
        var tab = new Tab(device);

        await tab.Keeper.OpenAsync(kit.Id);

        tab.Desk.Plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
        tab.Desk.Kit!.Beside.IsNothing.Should().BeTrue();
    }

    [Fact]
    public void What_lies_beside_a_kit_is_read_as_it_was_written()
    {
        var beside = new KitBeside(new Dictionary<string, string> { ["pipes/reed"] = Pipe }, [new PinnedState("Pin 3: \"ä\"", "kit: Moor\r\n", 3)]);

        var read = KitBeside.Read(beside.Write());

        read.Parts.Should().BeEquivalentTo(beside.Parts);
        read.Pins.Should().Equal(beside.Pins);
        KitBeside.Nothing.Write().Should().BeEmpty();
    }

    [Fact]
    public async Task A_correction_of_the_kit_in_hand_is_kept_and_planned_with()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Asked.Demo())]);
        tab.Desk.Plan!.Corrections.Should().BeEmpty();

        var notices = await tab.Door.OpenAsync([File("fen.correction.yaml", Correction("Fen edge"))]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.Corrected);
        tab.Desk.Plan!.Corrections.Should().Contain("2026-05-09");
        (await tab.Door.OpenAsync([File("later.correction.yaml", Correction("Fen edge").Replace("05-09", "06-09", StringComparison.Ordinal))])).Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.CorrectionThere);
        tab.Desk.Plan.Corrections.Should().Contain("2026-05-09");
    }

    [Fact]
    public async Task A_correction_of_another_kit_is_refused_by_name()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Asked.Demo())]);

        var notice = (await tab.Door.OpenAsync([File("heath.correction.yaml", Correction("Heath"))])).Should().ContainSingle().Subject;

        notice.Should().Be(new KeepingNotice(KeepingNoticeKind.CorrectionOfOther, "heath.correction.yaml", "Heath"));
        tab.Desk.Plan!.Corrections.Should().BeEmpty();
    }

    [Fact]
    public async Task Corrections_come_in_again_from_an_archive_of_everything_whichever_kit_is_in_hand()
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Asked.Demo())]);
        await tab.Door.OpenAsync([File("fen.correction.yaml", Correction("Fen edge"))]);
        var together = tab.Corrections.Together();

        var other = new Tab(new SharedDevice());
        await other.Door.OpenAsync([File("heath.yaml", Asked.Demo().Replace("kit: Fen edge", "kit: Heath", StringComparison.Ordinal))]);
        var notices = await other.Door.OpenAsync([.. together.Select(file => File("1.correction.yaml", file.Value) with { Path = file.Key })]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.Corrected);
        other.Corrections.Of("Fen edge")!.Text.Should().Be(Correction("Fen edge"));
        other.Desk.Plan!.Corrections.Should().BeEmpty("it is the correction of another kit");
    }

    [Theory]
    [InlineData("correction-of: Fen edge\n", "date")]
    [InlineData("correction-of: Fen edge\ndate: yesterday\n", "cannot be used")]
    [InlineData("correction-of: Fen edge\ndate: 2026-05-09\npanel-transmittance: {stops: 999, plus-minus: 0.1, before: 0.5, after: 0.6}\n", "stops")]
    [InlineData("correction-of: [\n", "cannot be used")]
    public async Task A_damaged_correction_is_refused_in_a_sentence(string text, string says)
    {
        var tab = new Tab(new SharedDevice());
        await tab.Door.OpenAsync([File("fen.yaml", Asked.Demo())]);

        var notice = (await tab.Door.OpenAsync([File("fen.correction.yaml", text)])).Should().ContainSingle().Subject;

        notice.Kind.Should().Be(KeepingNoticeKind.NotOpened);
        notice.Other.Should().Contain(says).And.Contain("fen.correction.yaml");
    }

    private static string Correction(string kit) => $"correction-of: {kit}\ndate: 2026-05-09\npanel-transmittance: {{stops: 0.11, plus-minus: 0.12, before: 0.5, after: 0.54}}\n";

    private static OpenedFile File(string name, string text, string? path = null) => new(name, Convert.ToBase64String(Encoding.UTF8.GetBytes(text)), "") { Path = path ?? name };

    // A page in a tab, whose worker is the real one.
    private sealed class Tab : IEngine, IDevice, IDemoKits
    {
        private readonly Asked _asked = new();
        private readonly Dictionary<string, string> _notes = new(StringComparer.Ordinal);

        public Tab(SharedDevice device)
        {
            Device = device;
            var own = device.Tab();
            Desk = new Desk(this);
            Keeper = new KitKeeper(Desk, own, own);
            Pins = new Pins(Desk, Keeper);
            Corrections = new Corrections(this, this, Desk);
            Door = new KitDoor(Keeper, own, this, this, new PartDoor(Keeper, own, this, Desk), Corrections);
        }

        public SharedDevice Device { get; }

        public Desk Desk { get; }

        public KitKeeper Keeper { get; }

        public Pins Pins { get; }

        public KitDoor Door { get; }

        public Corrections Corrections { get; }

        public IReadOnlyList<string> Names => [];

        public Task<TAnswer?> AskAsync<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request, IProgress<string>? progress = null)
            where TAnswer : class => Task.FromResult<TAnswer?>(_asked.For(question, request));

        public Task SaveAsync(string name) => Task.CompletedTask;

        public Task<string> TextAsync(string name) => Task.FromResult(Asked.Demo(name));

        public Task KeepAsync(string name, string note)
        {
            _notes[name] = note;
            return Task.CompletedTask;
        }

        public Task<string> KeptAsync(string name) => Task.FromResult(_notes.GetValueOrDefault(name, ""));

        public Task<bool> StayAwakeAsync(bool awake) => Task.FromResult(false);

        public Task BuzzAsync() => Task.CompletedTask;
    }
}
