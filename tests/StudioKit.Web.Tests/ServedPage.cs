using System.Reflection;
using Microsoft.Playwright;
using StudioKit.Cli.Serving;

namespace StudioKit.Web.Tests;

/// <summary>The published page behind its own server, and a browser to look at it; one for all tests of a class.</summary>
public sealed class ServedPage : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private PageServer? _server;
    private Visit? _same;

    /// <summary>Folder of the published page.</summary>
    public static string Folder { get; } = typeof(ServedPage).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(entry => entry.Key == "PageFolder").Value!;

    /// <summary>Where the page is.</summary>
    public Uri Address => _server!.Address;

    public async Task InitializeAsync()
    {
        if (Browser.Program is { } program)
        {
            _server = await PageServer.StartAsync(PageFolder.In(Folder), port: 0);
            _playwright = await Playwright.CreateAsync();
            _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = Browser.Switches });
        }
    }

    /// <summary>A visitor whose device knows nothing of the page yet.</summary>
    /// <param name="width">Width of the screen in pixels.</param>
    /// <param name="height">Height of the screen in pixels.</param>
    /// <param name="address">Where the page is visited; at its own server where left out.</param>
    /// <param name="blockCopy">Whether the browser keeps no copy of the page.</param>
    /// <param name="room">Bytes that the browser lets the page keep; as many as any page where left out.</param>
    /// <param name="touch">Whether its screen is touched, as a phone's is.</param>
    /// <param name="before">What is done at the page's address before the page itself is opened there.</param>
    public async Task<Visit> VisitAsync(int width = 1024, int height = 768, Uri? address = null, bool blockCopy = false, int? room = null, bool touch = false, Func<IPage, Task>? before = null)
    {
        _browser.Should().NotBeNull("this machine is to have a Chromium");
        var context = await _browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            HasTouch = touch,
            IsMobile = touch,
            ServiceWorkers = blockCopy ? ServiceWorkerPolicy.Block : ServiceWorkerPolicy.Allow,
        });
        return await Visit.BeginAsync(context, address ?? Address, room, before);
    }

    /// <summary>The one visitor whom tests share that only look at the page; begun by the first of them.</summary>
    /// <param name="width">Width of the screen in pixels.</param>
    /// <param name="height">Height of the screen in pixels.</param>
    public async Task<Visit> SameVisitAsync(int width, int height = 768)
    {
        _same ??= await VisitAsync(width, height);
        await _same.Page.SetViewportSizeAsync(width, height);
        return _same;
    }

    /// <summary>A visitor whose browser remembers, as a window that leaves no traces installs nothing.</summary>
    /// <param name="folder">Where it keeps what it remembers.</param>
    public async Task<Visit> RememberedVisitAsync(string folder)
    {
        var context = await _playwright!.Chromium.LaunchPersistentContextAsync(folder, new() { ExecutablePath = Browser.Program, Args = Browser.Switches });
        return await Visit.BeginAsync(context, Address);
    }

    public async Task DisposeAsync()
    {
        if (_same is not null)
        {
            await _same.DisposeAsync();
        }

        if (_browser is not null)
        {
            await _browser.DisposeAsync();
            await _server!.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
