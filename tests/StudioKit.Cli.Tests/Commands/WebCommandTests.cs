using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using StudioKit.Cli.Tests.Running;
using StudioKit.Cli.Tests.Serving;

namespace StudioKit.Cli.Tests.Commands;

public sealed partial class WebCommandTests : IDisposable
{
    private readonly SmallPage _page = new();

    public void Dispose() => _page.Dispose();

    [Fact]
    public void The_page_is_served_and_opened_until_the_command_is_told_to_stop()
    {
        using var stop = new CancellationTokenSource();
        Uri? opened = null;
        HttpStatusCode? answered = null;
        var run = Run(stop, address =>
        {
            opened = address;
            using var client = new HttpClient();
            answered = client.GetAsync(address).GetAwaiter().GetResult().StatusCode;
            stop.Cancel();
            return true;
        });

        run.ExitCode.Should().Be(0);
        run.Output.Trim().Should().Be(opened!.AbsoluteUri);
        answered.Should().Be(HttpStatusCode.OK);
        run.Error.Should().Contain("to this machine alone").And.NotContain("No browser");
    }

    [Fact]
    public void Where_no_browser_opens_the_address_is_told()
    {
        using var stop = new CancellationTokenSource();
        var run = Run(stop, address =>
        {
            stop.Cancel();
            return false;
        });

        run.ExitCode.Should().Be(0);
        run.Error.Should().Contain($"No browser could be opened: open {run.Output.Trim()} in one.");
    }

    [Fact]
    public void Where_no_browser_is_wanted_none_is_opened()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        var opened = false;

        var run = Run(stop, _ => opened = true, "--no-browser");

        run.ExitCode.Should().Be(0);
        opened.Should().BeFalse();
    }

    [Fact]
    public void A_port_that_another_has_is_refused_with_a_free_one_named()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port;

        var run = CommandRun.Of("web", "--page", _page.Path, "--port", FormattableString.Invariant($"{port}"), "--no-browser");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(FormattableString.Invariant($"port {port} cannot be used")).And.Contain("e.g. --port").And.NotContain("   at ");
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("65536")]
    [InlineData("many")]
    public void A_port_that_is_none_is_refused_with_the_form_that_works(string port)
    {
        var run = CommandRun.Of("web", "--page", _page.Path, $"--port={port}", "--no-browser");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--port");
    }

    [Fact]
    public void A_folder_that_holds_no_page_is_file_trouble_and_says_how_to_make_one()
    {
        var run = CommandRun.Of("web", "--page", Path.Combine(_page.Path, "_framework"), "--no-browser");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("holds no index.html").And.Contain("dotnet publish");
    }

    [Fact]
    public void The_source_of_the_page_is_not_taken_for_the_page()
    {
        Directory.Delete(Path.Combine(_page.Path, "_framework"), recursive: true);

        var run = CommandRun.Of("web", "--page", _page.Path, "--no-browser");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("it is the page's source");
    }

    [Fact]
    public void Another_page_is_not_served_as_ours()
    {
        _page.Write("index.html", "<!DOCTYPE html><title>Sundews</title>");

        var run = CommandRun.Of("web", "--page", _page.Path, "--no-browser");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("Content-Security-Policy");
    }

    [Fact]
    public void A_command_without_a_page_beside_it_says_so()
    {
        var run = CommandRun.Of("web", "--no-browser");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("does not lie beside this command").And.Contain("--page");
    }

    /// <summary>As a person does it: the keys are pressed, and the process ends without a fault and without a trace.</summary>
    [Fact]
    public async Task Ctrl_C_ends_the_serving()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var web = CliProcess.Start("web", "--page", _page.Path, "--port", "0", "--no-browser");
        var error = web.StandardError.ReadToEndAsync();
        var address = await web.StandardOutput.ReadLineAsync();
        using var client = new HttpClient();
        var page = await client.GetStringAsync(new Uri(address!));
        CliProcess.Interrupt(web);
        await web.WaitForExitAsync();

        page.Should().Contain(SmallPage.Policy);
        web.ExitCode.Should().Be(0);
        (await error).Should().Contain("no longer served").And.NotContainAny("   at ", "nothing was written");
    }

    /// <summary>The manual of the page names the address under which the command serves it.</summary>
    [Fact]
    public void The_help_names_the_port_that_is_taken_unless_another_is_given()
    {
        var port = Port().Match(CommandRun.Of("web", "--help").Output).Groups["port"].Value;

        port.Should().NotBeEmpty();
        CommandRun.Of("help", "page").Output.Should().Contain($"http://127.0.0.1:{port}/");
    }

    private CommandRun Run(CancellationTokenSource stop, Func<Uri, bool> open, params string[] more)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var host = new CommandHost { Output = output, Error = error, Stop = stop.Token, OpenBrowser = open };
        var code = StudioKitCommand.Run(["web", "--page", _page.Path, "--port", "0", .. more], host);
        return new CommandRun(code, output.ToString(), error.ToString());
    }

    [GeneratedRegex("Default: (?<port>\\d+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Port();
}
