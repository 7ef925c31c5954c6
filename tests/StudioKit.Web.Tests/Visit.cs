using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>One visitor's tab. Whatever the page complains of, and wherever it asks beyond its own server, is kept and must be nothing.</summary>
public sealed class Visit : IAsyncDisposable
{
    // A cold start on a busy machine.
    private const float Patience = 90_000;

    private readonly IBrowserContext _context;
    private readonly List<string> _complaints = [];

    private readonly Uri _address;

    private Visit(IBrowserContext context, IPage page, Uri address) => (_context, Page, _address) = (context, page, address);

    /// <summary>The tab.</summary>
    public IPage Page { get; }

    /// <summary>Errors on the console, failures of scripts, and requests to other origins.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    internal static async Task<Visit> BeginAsync(IBrowserContext context, Uri address, int? room = null, Func<IPage, Task>? before = null)
    {
        context.SetDefaultTimeout(Patience);
        Assertions.SetDefaultExpectTimeout(Patience);
        if (before is not null)
        {
            // A file of the page's that runs nothing, in a tab of its own: what the browser asks about that file, as for its icon, is no complaint of the page.
            var earlier = await context.NewPageAsync();
            await earlier.GotoAsync(new Uri(address, "icon.svg").AbsoluteUri);
            await before(earlier);
            await earlier.CloseAsync();
        }

        var page = await context.NewPageAsync();
        if (room is not null)
        {
            await new Visit(context, page, address).GiveRoomAsync(room);
        }

        return await OpenAsync(context, page, address);
    }

    /// <summary>Opens the page in another tab of the same browser.</summary>
    /// <param name="before">What is done in the tab before the page is opened.</param>
    public async Task<Visit> AnotherTabAsync(Func<IPage, Task>? before = null)
    {
        var page = await _context.NewPageAsync();
        if (before is not null)
        {
            await before(page);
        }

        return await OpenAsync(_context, page, _address);
    }

    /// <summary>Tools of the browser for its tab, over its protocol.</summary>
    public Task<ICDPSession> ToolsAsync() => _context.NewCDPSessionAsync(Page);

    /// <summary>The tab dies without a word, as when the device runs out of memory.</summary>
    public async Task DieAsync()
    {
        var tools = await ToolsAsync();
        var died = new TaskCompletionSource();
        Page.Crash += (_, _) => died.TrySetResult();
        _ = tools.SendAsync("Page.crash").ContinueWith(task => task.Exception, TaskScheduler.Default);
        await died.Task.WaitAsync(TimeSpan.FromMilliseconds(Patience));
        await Page.CloseAsync();
    }

    /// <summary>Limits what the browser lets the page keep.</summary>
    /// <param name="bytes">So much; null for what it lets every page keep.</param>
    public async Task GiveRoomAsync(int? bytes)
    {
        var arguments = new Dictionary<string, object> { ["origin"] = _address.GetLeftPart(UriPartial.Authority) };
        if (bytes is { } most)
        {
            arguments["quotaSize"] = most;
        }

        await (await ToolsAsync()).SendAsync("Storage.overrideQuotaForOrigin", arguments);
    }

    /// <summary>Waits until the whole page is on the device.</summary>
    public Task CopiedAsync() => Page.EvaluateAsync("() => navigator.serviceWorker.ready");

    /// <summary>Waits until the kit in hand is kept in a certain way.</summary>
    /// <param name="state">How.</param>
    public Task KeptAsync(string state) => Page.Locator($"[data-keeping='{state}']").WaitForAsync();

    /// <summary>Text of a kit on the device, as it is kept.</summary>
    /// <param name="name">Its file name.</param>
    public Task<string> KeptTextAsync(string name) => Page.EvaluateAsync<string>(
        """
        (name) => new Promise((resolve) => {
            const asked = indexedDB.open('studiokit');
            asked.onsuccess = () => {
                const kits = asked.result.transaction('kits').objectStore('kits').getAll();
                kits.onsuccess = () => { asked.result.close(); resolve(kits.result.find((kit) => kit.name === name)?.text ?? 'none'); };
            };
        })
        """, name);

    /// <summary>Names of everything that there is to do.</summary>
    public async Task<IReadOnlyList<string>> RoomsAsync() => await Page.Locator("nav.rooms button").AllInnerTextsAsync();

    /// <summary>Goes to one of them.</summary>
    /// <param name="name">Its name.</param>
    public async Task RoomAsync(string name)
    {
        await Page.Locator("nav.rooms").GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
        await Page.Locator("main h1").First.WaitForAsync();
    }

    /// <summary>Opens files by the page's own button.</summary>
    /// <param name="files">Names and contents.</param>
    public async Task OpenFilesAsync(params (string Name, byte[] Bytes)[] files)
    {
        var chooser = await Page.RunAndWaitForFileChooserAsync(() => Page.GetByRole(AriaRole.Button, new() { Name = "Open files" }).ClickAsync());
        await chooser.SetFilesAsync(files.Select(file => new FilePayload { Name = file.Name, MimeType = "application/octet-stream", Buffer = file.Bytes }));
    }

    /// <summary>Waits for a plan that is not the one given.</summary>
    /// <param name="last">Hash of the plan shown before; empty for none.</param>
    /// <returns>The new plan's hash.</returns>
    public async Task<string> PlannedAsync(string last = "")
    {
        var main = Page.Locator($"main[data-plan]:not([data-plan='{last}']):not([data-plan=''])");
        await main.WaitForAsync();
        return (await main.GetAttributeAsync("data-plan"))!;
    }

    public async ValueTask DisposeAsync() => await _context.CloseAsync();

    private static async Task<Visit> OpenAsync(IBrowserContext context, IPage page, Uri address)
    {
        var visit = new Visit(context, page, address);
        page.Console += (_, said) => visit.Keep(said.Type is "error" or "warning" && !said.Text.Contains("blocked by Playwright", StringComparison.Ordinal), said.Text);
        page.PageError += (_, error) => visit.Keep(true, error);
        context.Request += (_, asked) => visit.Keep(IsForeign(asked.Url, address), $"asked {asked.Url}");
        await page.GotoAsync(address.AbsoluteUri);
        return visit;
    }

    private static bool IsForeign(string url, Uri address) => new Uri(url) is { Scheme: "http" or "https" } asked && asked.Authority != address.Authority;

    private void Keep(bool isComplaint, string text)
    {
        if (isComplaint)
        {
            _complaints.Add(text);
        }
    }
}
