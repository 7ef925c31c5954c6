using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>One visitor's tab. Whatever the page complains of, and wherever it asks beyond its own server, is kept and must be nothing.</summary>
public sealed class Visit : IAsyncDisposable
{
    // A cold start on a busy machine.
    private const float Patience = 90_000;

    private readonly IBrowserContext _context;
    private readonly List<string> _complaints = [];

    private Visit(IBrowserContext context, IPage page) => (_context, Page) = (context, page);

    /// <summary>The tab.</summary>
    public IPage Page { get; }

    /// <summary>Errors on the console, failures of scripts, and requests to other origins.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    internal static async Task<Visit> BeginAsync(IBrowserContext context, Uri address)
    {
        context.SetDefaultTimeout(Patience);
        var page = await context.NewPageAsync();
        var visit = new Visit(context, page);
        page.Console += (_, said) => visit.Keep(said.Type is "error" or "warning", said.Text);
        page.PageError += (_, error) => visit.Keep(true, error);
        context.Request += (_, asked) => visit.Keep(IsForeign(asked.Url, address), $"asked {asked.Url}");
        await page.GotoAsync(address.AbsoluteUri);
        return visit;
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

    private static bool IsForeign(string url, Uri address) => new Uri(url) is { Scheme: "http" or "https" } asked && asked.Authority != address.Authority;

    private void Keep(bool isComplaint, string text)
    {
        if (isComplaint)
        {
            _complaints.Add(text);
        }
    }
}
