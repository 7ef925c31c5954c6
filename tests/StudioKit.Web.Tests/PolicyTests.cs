using System.Text.RegularExpressions;

namespace StudioKit.Web.Tests;

/// <summary>What the page lets itself do (Content Security Policy Level 3), and how its worker and its own runtime share the work.</summary>
public sealed partial class PolicyTests(ServedPage served) : IClassFixture<ServedPage>
{
    private static string Opening => File.ReadAllText(Path.Combine(ServedPage.Folder, "index.html"));

    [Fact]
    public void The_page_lets_itself_run_its_own_files_alone()
    {
        var policy = Policy().Match(Opening).Groups["policy"].Value;
        var directives = policy.Split(';', StringSplitOptions.TrimEntries).Select(line => line.Split(' ', 2)).ToDictionary(parts => parts[0], parts => parts[1], StringComparer.Ordinal);

        policy.Should().NotContainAny("'unsafe-inline'", "'unsafe-eval'", "http:", "https:", "*");
        directives["default-src"].Should().Be("'none'");
        directives["script-src"].Should().Be("'self' 'wasm-unsafe-eval'", "the runtime is compiled, and nothing else is");
        directives["connect-src"].Should().Be("'self'", "nothing is sent anywhere");
        directives.Should().ContainKeys("base-uri", "form-action");
    }

    [Fact]
    public void No_script_and_no_style_stands_in_the_page_itself()
    {
        Opening.Should().NotMatchRegex("<script(?![^>]*\\ssrc=)", "scripts are files").And.NotMatchRegex("\\sstyle=|<style|\\son[a-z]+=", "styles and handlers are, too");
        Links().Matches(Opening).Select(match => match.Groups["to"].Value).Should().OnlyContain(to => !to.Contains("//", StringComparison.Ordinal), "all of it is the page's own");
    }

    /// <summary>What the worker's own answer says counts for the worker, not what the page's head says.</summary>
    [BrowserFact]
    public async Task The_worker_is_bound_by_the_pages_policy()
    {
        using var client = new HttpClient();
        using var answer = await client.GetAsync(new Uri(served.Address, "js/engine-worker.js"));

        answer.Headers.GetValues("Content-Security-Policy").Single().Should().StartWith(Policy().Match(Opening).Groups["policy"].Value);
    }

    /// <summary>
    /// The loader takes a worker for a thread of the page's own runtime unless this name says otherwise. It is not documented: where a newer loader no longer knows it, this says so,
    /// and not a page that never gets ready.
    /// </summary>
    [Fact]
    public void The_loader_still_knows_the_switch_by_which_the_worker_gets_a_runtime_of_its_own()
    {
        File.ReadAllText(Path.Combine(ServedPage.Folder, "_framework", "dotnet.js")).Should().Contain("dotnetSidecar");
        File.ReadAllText(Path.Combine(ServedPage.Folder, "js", "engine-worker.js")).Should().Contain("globalThis.dotnetSidecar = true");
    }

    /// <summary>The runtime passes over options that it does not know, and the page would only be slower to open.</summary>
    [Fact]
    public void The_runtime_still_knows_the_options_that_it_is_started_with()
    {
        var options = Options().Matches(File.ReadAllText(Path.Combine(ServedPage.Folder, "js", "runtime-options.js")));

        options.Should().NotBeEmpty();
        options.Select(option => option.Groups["name"].Value).Should().OnlyContain(name => File.ReadAllText(Path.Combine(ServedPage.Folder, "_framework", "dotnet.runtime.js")).Contains($"\"{name}\""));
    }

    [BrowserFact]
    public async Task The_core_is_loaded_once_and_by_the_worker_alone()
    {
        await using var host = await PlainHost.StartAsync();
        await using var visit = await served.VisitAsync(address: host.Address, blockCopy: true);
        await visit.PlannedAsync();

        var loadedByPage = await visit.Page.EvaluateAsync<string[]>("() => performance.getEntriesByType('resource').map((entry) => entry.name)");

        foreach (var assembly in new[] { "StudioKit.Physics", "StudioKit.Kits", "StudioKit.Planning", "UnitsNet", "YamlDotNet" }.Select(name => $"_framework/{name}.wasm"))
        {
            host.Asked.Count(name => name == assembly).Should().Be(1, $"{assembly} is large, and only the worker plans");
            loadedByPage.Should().NotContain(name => name.EndsWith(assembly, StringComparison.Ordinal));
        }
    }

    [GeneratedRegex("Content-Security-Policy\" content=\"(?<policy>[^\"]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Policy();

    [GeneratedRegex("'--(?<name>[a-z-]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Options();

    [GeneratedRegex("(?:src|href)=\"(?<to>[^\"]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Links();
}
