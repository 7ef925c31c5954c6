using System.CommandLine;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using StudioKit.Cli.Files;
using StudioKit.Cli.Serving;
using StudioKit.Cli.Usage;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit web</c>: serves the planner's page to this machine.</summary>
internal sealed class WebCommand
{
    // Fixed, as a browser keeps kits by the address, and the number is part of it. From memory, no service has it registered.
    private const int UsualPort = 18611;
    private const int LastPort = 65535;

    private const string Text =
        """
        Serves the planner as a page to the browser of this machine, and opens it. Nobody else on the network can reach it, and it asks nothing of the network itself.

        The kits stay in the browser, which keeps them by the page's address: another --port shows other kits. Ctrl-C ends the serving; the page then works on from its own copy.

        Example: studiokit web
        Example: studiokit web --port 18700 --no-browser
        """;

    private readonly CommandHost _host;
    private readonly Option<int> _port = new("--port")
    {
        Description = $"Port of this machine to serve on, e.g. 18700, from 1 to {LastPort}; 0 takes any that is free.",
        HelpName = "number",
        DefaultValueFactory = _ => UsualPort,
    };

    private readonly Option<string?> _page = new("--page")
    {
        Description = "Folder of the published page, e.g. out/web; the page that lies beside the command where left out.",
        HelpName = "folder",
    };

    private readonly Option<bool> _noBrowser = new("--no-browser") { Description = "Only print the address, and open no browser." };

    private WebCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var web = new WebCommand(host);
        var command = new Command("web", Text) { web._port, web._page, web._noBrowser };
        command.SetAction(async (parsed, _) => (int)await web.RunAsync(parsed));
        return command;
    }

    private async Task<ExitCode> RunAsync(ParseResult parsed)
    {
        var port = parsed.GetValue(_port);
        if (port is < 0 or > LastPort)
        {
            return Refuse(UsageCodes.BadUsage, FormattableString.Invariant($"--port: a port is a number from 1 to {LastPort}, or 0 for any that is free, e.g. {UsualPort}."));
        }

        var page = parsed.GetValue(_page) is { } folder ? PageFolder.In(folder) : PageFolder.Installed();
        try
        {
            await using var server = await PageServer.StartAsync(page, port);
            await ServeAsync(server.Address, parsed.GetValue(_noBrowser));
            return ExitCode.Done;
        }
        catch (Exception trouble) when (IsAboutPort(trouble))
        {
            return Refuse(UsageCodes.Refused, FormattableString.Invariant(
                $"port {port} cannot be used: another program has it, perhaps another 'studiokit web', or it is not for everybody. Open http://127.0.0.1:{port}/ to see, or take another, e.g. --port {(port == LastPort ? UsualPort : port + 1)}."));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new FileTroubleException($"cannot read the page in {page.Path}: {trouble.Message}", trouble);
        }
    }

    private async Task ServeAsync(Uri address, bool quietly)
    {
        _host.Output.WriteLine(address.AbsoluteUri);
        await _host.Output.FlushAsync(CancellationToken.None);
        _host.Error.WriteLine("The page is served to this machine alone. Ctrl-C ends it.");
        if (!quietly && !_host.OpenBrowser(address))
        {
            _host.Error.WriteLine($"No browser could be opened: open {address.AbsoluteUri} in one.");
        }

        var ended = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await using var heard = _host.Stop.Register(ended.SetResult);
        await ended.Task;

        // Who ends the serving is told so here, and not that a piece of work was broken off.
        Interlocked.Exchange(ref _host.Stopped.Value, 1);
        _host.Error.WriteLine("The page is no longer served; a browser that opened it works on from its own copy.");
    }

    private ExitCode Refuse(string code, string sentence)
    {
        _host.Report(code, sentence);
        return ExitCode.BadInput;
    }

    private static bool IsAboutPort(Exception trouble) => trouble is SocketException || trouble.InnerException is AddressInUseException or SocketException;
}
