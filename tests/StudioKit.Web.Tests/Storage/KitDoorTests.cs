using System.Text;
using StudioKit.Web.Editing;
using StudioKit.Web.Outdoors;
using StudioKit.Web.Storage;
using StudioKit.Web.Tests.Editing;

namespace StudioKit.Web.Tests.Storage;

/// <summary>Nothing on the device is replaced by what comes in, and nothing that comes in is left outside.</summary>
public sealed class KitDoorTests
{
    private readonly SharedDevice _device = new();

    [Fact]
    public async Task A_file_of_a_known_name_and_another_text_is_kept_beside_the_kit_of_that_name()
    {
        var (door, tab) = await DoorAsync();

        var notices = await door.OpenAsync([File("fen.yaml", "heath")]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.NameTaken);
        tab.Text.Should().Be("heath");
        _device.Texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["fen.yaml"] = "fen", ["fen (2).yaml"] = "heath" });
    }

    [Fact]
    public async Task A_file_that_is_on_the_device_already_is_opened_and_not_kept_twice()
    {
        var (door, tab) = await DoorAsync();
        await door.OpenAsync([File("heath.yaml", "heath")]);

        var notices = await door.OpenAsync([File("fen.yaml", "fen")]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(KeepingNoticeKind.KnownAlready);
        tab.Text.Should().Be("fen");
        _device.Texts.Should().HaveCount(2);
    }

    [Fact]
    public async Task Of_several_files_each_is_kept_and_the_last_one_opened()
    {
        var (door, tab) = await DoorAsync();

        await door.OpenAsync([File("heath.yaml", "heath"), File("mire.yaml", "mire")]);

        tab.Text.Should().Be("mire");
        _device.Texts.Keys.Should().BeEquivalentTo("fen.yaml", "heath.yaml", "mire.yaml");
    }

    [Theory]
    [InlineData("notes.txt", "Thursday: two moths, no wind.", false)]
    [InlineData("notes.yaml", "Thursday: two moths, no wind.", true)]
    [InlineData("fen.txt", "kit: Fen", true)]
    public async Task A_text_that_is_no_kit_by_name_or_by_key_is_not_kept_as_one(string name, string text, bool isKit)
    {
        var (door, tab) = await DoorAsync();

        var notices = await door.OpenAsync([File(name, text)]);

        notices.Should().ContainSingle().Which.Kind.Should().Be(isKit ? KeepingNoticeKind.Opened : KeepingNoticeKind.NotOpened);
        tab.Text.Should().Be(isKit ? text : "fen");
        _device.Texts.Should().HaveCount(isKit ? 2 : 1);
    }

    private async Task<(KitDoor Door, OpenTab Tab)> DoorAsync()
    {
        var tab = await OpenTab.OnAsync(_device);
        var engine = new WaitingEngine("none");
        return (new KitDoor(tab.Keeper, tab.Own, new NoDemos(), engine, new PartDoor(tab.Keeper, tab.Own, engine, tab.Desk), new Corrections(engine, new NoNotes(), tab.Desk)), tab);
    }

    private static OpenedFile File(string name, string text) => new(name, Convert.ToBase64String(Encoding.UTF8.GetBytes(text)), "");

    private sealed class NoNotes : IDevice
    {
        public Task KeepAsync(string name, string note) => Task.CompletedTask;

        public Task<string> KeptAsync(string name) => Task.FromResult("");

        public Task<bool> StayAwakeAsync(bool awake) => Task.FromResult(false);

        public Task BuzzAsync() => Task.CompletedTask;
    }

    private sealed class NoDemos : IDemoKits
    {
        public IReadOnlyList<string> Names => [];

        public Task<string> TextAsync(string name) => Task.FromResult("");
    }
}
