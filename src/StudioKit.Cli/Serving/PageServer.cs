using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace StudioKit.Cli.Serving;

/// <summary>Serves the published page to browsers of this machine alone: it listens on the loopback interface, and answers nothing but the page's own files.</summary>
internal sealed class PageServer : IAsyncDisposable
{
    private readonly WebApplication _application;

    private PageServer(WebApplication application, Uri address) => (_application, Address) = (application, address);

    /// <summary>Where the page is.</summary>
    public Uri Address { get; }

    /// <summary>Starts serving.</summary>
    /// <param name="folder">Folder of the published page.</param>
    /// <param name="port">Port of the loopback interface; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<PageServer> StartAsync(string folder, int port)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Listen(kestrel, port));
        var application = builder.Build();
        var files = new PageFiles(folder);
        application.Run(files.AnswerAsync);
        await application.StartAsync();
        var address = application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new PageServer(application, new Uri(address));
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _application.DisposeAsync();

    private static void Listen(KestrelServerOptions kestrel, int port)
    {
        kestrel.AddServerHeader = false;
        kestrel.Listen(IPAddress.Loopback, port);
    }
}
