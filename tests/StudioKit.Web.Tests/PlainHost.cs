using System.Collections.Concurrent;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace StudioKit.Web.Tests;

/// <summary>Any static host: it serves the page from a sub-folder, says of a file only its kind, and knows nothing of policies, packing or caching. Files can be put in the place of the page's.</summary>
internal sealed class PlainHost : IAsyncDisposable
{
    private const string SubFolder = "/moor/";
    private readonly WebApplication _application;
    private readonly ConcurrentDictionary<string, byte[]> _replaced = new(StringComparer.Ordinal);
    private readonly ConcurrentBag<string> _asked = [];

    private PlainHost(WebApplication application) => _application = application;

    /// <summary>Where the page is.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>Every file that was asked for, as often as it was.</summary>
    public IReadOnlyList<string> Asked => [.. _asked];

    public static async Task<PlainHost> StartAsync()
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var host = new PlainHost(builder.Build());
        host._application.Run(host.AnswerAsync);
        await host._application.StartAsync();
        var address = host._application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        host.Address = new Uri(address + SubFolder);
        return host;
    }

    /// <summary>A file of the page as it is served now.</summary>
    public byte[] File(string name) => _replaced.TryGetValue(name, out var other) ? other : System.IO.File.ReadAllBytes(Path.Combine(ServedPage.Folder, name));

    /// <summary>Puts other bytes in a file's place; none takes the file away.</summary>
    public void Replace(string name, byte[] bytes) => _replaced[name] = bytes;

    public async ValueTask DisposeAsync() => await _application.DisposeAsync();

    private async Task AnswerAsync(HttpContext context)
    {
        var path = context.Request.Path.Value ?? "";
        var name = path == SubFolder ? "index.html" : path.StartsWith(SubFolder, StringComparison.Ordinal) ? path[SubFolder.Length..] : "";
        _asked.Add(name);
        if (name.Length == 0 || (!_replaced.ContainsKey(name) && !System.IO.File.Exists(Path.Combine(ServedPage.Folder, name))))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        context.Response.ContentType = Path.GetExtension(name) switch
        {
            ".html" => "text/html",
            ".js" => "text/javascript",
            ".css" => "text/css",
            ".wasm" => "application/wasm",
            ".svg" => "image/svg+xml",
            ".png" => "image/png",
            ".webmanifest" => "application/manifest+json",
            _ => "application/octet-stream",
        };
        await context.Response.Body.WriteAsync(File(name), context.RequestAborted);
    }
}
