using System.Text;
using Microsoft.Playwright;
using StudioKit.Kits;

namespace StudioKit.Web.Tests;

/// <summary>The safety of kits in a real browser; what happens in which order is tried natively, with many more cases.</summary>
public sealed class KeepingTests(ServedPage served) : IClassFixture<ServedPage>
{
    [BrowserFact]
    public async Task A_tab_that_dies_loses_nothing()
    {
        await using var visit = await served.VisitAsync();
        var demo = await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin with the commented kit" }).ClickAsync();
        await visit.PlannedAsync(demo);
        await visit.KeptAsync("Saved");
        var text = await visit.KeptTextAsync("my-kit.yaml");
        await visit.DieAsync();

        var next = await visit.AnotherTabAsync();
        await next.KeptAsync("Saved");
        await next.RoomAsync("Kits");

        text.Should().Be(StarterKit.Text);
        (await next.KeptTextAsync("my-kit.yaml")).Should().Be(text);
        (await next.Page.Locator(".kits .open .name").TextContentAsync()).Should().Be("my-kit.yaml", "the kit that was open is open again");
    }

    [BrowserFact]
    public async Task Two_tabs_of_a_kit_do_not_overwrite_one_another()
    {
        await using var first = await served.VisitAsync();
        await first.PlannedAsync();
        var second = await first.AnotherTabAsync();

        await second.KeptAsync("Elsewhere");
        await second.Page.GetByRole(AriaRole.Button, new() { Name = "Work on it here" }).ClickAsync();
        await second.KeptAsync("Saved");
        await first.KeptAsync("Elsewhere");
        var late = await first.Page.EvaluateAsync<string>("""
            async () => {
                const other = await import('/js/kit-store.js?other');
                const mine = await import('/js/kit-store.js');
                const [{ id }] = JSON.parse(await mine.list());
                await mine.load(id);
                await other.load(id);
                return [await other.save(id, 'newer'), await mine.save(id, 'late'), await mine.text(id)].join(' ');
            }
            """);
        await second.Page.CloseAsync();
        await first.KeptAsync("Saved");

        late.Should().Be("saved newer newer");
        first.Complaints.Should().BeEmpty();
        second.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Where_the_browser_has_no_room_the_kit_stays_in_hand_and_can_be_saved_as_a_file()
    {
        await using var visit = await served.VisitAsync(blockCopy: true, room: 1000);
        await visit.PlannedAsync();
        await visit.KeptAsync("NotSaved");
        (await visit.Page.GetByRole(AriaRole.Alert).TextContentAsync()).Should().Contain("no more room");

        var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save as a file", Exact = true }).First.ClickAsync());
        var saved = await File.ReadAllTextAsync((await download.PathAsync())!);
        await visit.GiveRoomAsync(bytes: null);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync();
        await visit.KeptAsync("Saved");

        var demo = await File.ReadAllTextAsync(Path.Combine(ServedPage.Folder, "kits", "fen-edge.yaml"));
        download.SuggestedFilename.Should().Be("fen-edge.yaml");
        saved.Should().Be(demo);
        (await visit.KeptTextAsync("fen-edge.yaml")).Should().Be(demo);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_hostile_file_is_refused_in_a_sentence_and_nothing_of_it_is_kept()
    {
        await using var visit = await served.VisitAsync();
        var hash = await visit.PlannedAsync();
        await visit.RoomAsync("Kits");

        await visit.OpenFilesAsync(
            ("large.yaml", Encoding.UTF8.GetBytes("name: |\n" + string.Concat(Enumerable.Repeat("  aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\n", 100_000)))),
            ("binary.yaml", [.. Enumerable.Range(0, 5_000_000).Select(i => (byte)(i * 7919))]),
            ("spoilt.yaml", [.. "name: fen "u8, 0xC3, 0x28]),
            ("none.zip", [.. "PK no archive"u8]),
            ("deep.yaml", Encoding.UTF8.GetBytes("name: " + new string('[', 900_000))));
        await visit.Page.GetByText("deep.yaml is kept on this device").WaitForAsync();
        var told = await visit.Page.Locator(".notices").InnerTextAsync();
        await visit.Page.GetByText("cannot be read").First.WaitForAsync();
        await visit.Page.ReloadAsync();
        await visit.Page.GetByText("cannot be read").First.WaitForAsync();
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "fen-edge.yaml", Exact = true }).ClickAsync();

        told.Should().Contain("large.yaml was not opened: The file is too large.").And.Contain("binary.yaml was not opened").And.Contain("spoilt.yaml was not opened: The file is not UTF-8 text.")
            .And.Contain("none.zip was not opened: It is no archive");
        (await visit.PlannedAsync()).Should().Be(hash);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_kit_over_which_the_page_died_does_not_lock_its_owner_out()
    {
        await using var visit = await served.VisitAsync(blockCopy: true);
        await visit.PlannedAsync();
        var stuck = await visit.AnotherTabAsync(page => page.RouteAsync("**/engine-worker.js", route => route.FulfillAsync(new() { ContentType = "text/javascript", Body = "self.onmessage = () => { };" })));
        await visit.Page.CloseAsync();
        await stuck.Page.WaitForFunctionAsync("() => localStorage.getItem('studiokit.opening')");
        await stuck.DieAsync();

        var next = await stuck.AnotherTabAsync();
        await next.Page.GetByText("did not get through fen-edge.yaml").WaitForAsync();
        await next.Page.GetByRole(AriaRole.Button, new() { Name = "fen-edge.yaml", Exact = true }).ClickAsync();

        await next.PlannedAsync();
        next.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task What_is_exported_is_an_archive_that_comes_in_again_and_replaces_nothing()
    {
        await using var visit = await served.VisitAsync();
        await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.OpenFilesAsync(("moth.yaml", "name: moth\n"u8.ToArray()));
        await visit.Page.GetByText("moth.yaml is kept").WaitForAsync();

        var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.GetByRole(AriaRole.Button, new() { Name = "Export everything" }).ClickAsync());
        var archive = await File.ReadAllBytesAsync((await download.PathAsync())!);
        using var read = new System.IO.Compression.ZipArchive(new MemoryStream(archive));
        var texts = read.Entries.ToDictionary(entry => entry.FullName, entry => new StreamReader(entry.Open(), Encoding.UTF8).ReadToEnd(), StringComparer.Ordinal);
        await visit.OpenFilesAsync(("moth.yaml", "name: another moth\n"u8.ToArray()), (download.SuggestedFilename, archive));
        await visit.Page.GetByText("moth.yaml is on this device already").WaitForAsync();

        texts.Should().BeEquivalentTo(new Dictionary<string, string> { ["moth.yaml"] = "name: moth\n", ["fen-edge.yaml"] = await File.ReadAllTextAsync(Path.Combine(ServedPage.Folder, "kits", "fen-edge.yaml")) });
        (await visit.Page.Locator(".notices").InnerTextAsync()).Should().Contain("this one is moth (2).yaml");
        (await visit.KeptTextAsync("moth.yaml")).Should().Be("name: moth\n");
        (await visit.KeptTextAsync("moth (2).yaml")).Should().Be("name: another moth\n");
        visit.Complaints.Should().BeEmpty();
    }

    /// <summary>A database with a higher number is one of a page to come: IndexedDB itself refuses it to this one (Indexed Database API, VersionError).</summary>
    [BrowserFact]
    public async Task Kits_of_a_page_to_come_are_left_alone()
    {
        await using var visit = await served.VisitAsync(before: page => page.EvaluateAsync("""
            () => new Promise((resolve) => {
                const asked = indexedDB.open('studiokit', 99);
                asked.onupgradeneeded = () => asked.result.createObjectStore('future').put('kept', 'kit');
                asked.onsuccess = () => { asked.result.close(); resolve(); };
            })
            """));

        await visit.KeptAsync("NotSaved");
        await visit.PlannedAsync();

        (await visit.Page.GetByRole(AriaRole.Alert).TextContentAsync()).Should().Contain("newer version of this page");
        (await visit.Page.EvaluateAsync<string>("""
            () => new Promise((resolve) => {
                const asked = indexedDB.open('studiokit');
                asked.onsuccess = () => { asked.result.transaction('future').objectStore('future').get('kit').onsuccess = (event) => resolve(`${asked.result.version} ${event.target.result}`); };
            })
            """)).Should().Be("99 kept");
        visit.Complaints.Should().BeEmpty();
    }
}
