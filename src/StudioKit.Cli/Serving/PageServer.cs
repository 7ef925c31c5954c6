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
    /// <param name="page">The published page.</param>
    /// <param name="port">Port of the loopback interface; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken, or a file of the page cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A folder of the page cannot be read.</exception>
    /// <exception cref="System.Net.Sockets.SocketException">The port may not be used.</exception>
    public static async Task<PageServer> StartAsync(PageFolder page, int port)
    {
        var files = new PageFiles(page.Path);
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Listen(kestrel, port));
        var application = builder.Build();
        try
        {
            var visitors = new VisitorRules(page.Policy);
            application.Run(context => visitors.Admit(context) ? files.AnswerAsync(context) : Task.CompletedTask);
            await application.StartAsync();
            var address = application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
            return new PageServer(application, new Uri(address));
        }
        catch
        {
            await application.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _application.DisposeAsync();

    private static void Listen(KestrelServerOptions kestrel, int port)
    {
        kestrel.AddServerHeader = false;
        kestrel.Listen(IPAddress.Loopback, port);
    }
}
