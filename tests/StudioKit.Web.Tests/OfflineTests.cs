using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

public sealed partial class OfflineTests(ServedPage served) : IClassFixture<ServedPage>
{
    /// <summary>From a sub-folder of a host that sends no header of its own, as the page is to work anywhere.</summary>
    [BrowserFact]
    public async Task A_page_that_was_visited_once_works_on_after_its_server_has_gone()
    {
        var host = await PlainHost.StartAsync();
        await using var visit = await served.VisitAsync(address: host.Address);
        var hash = await visit.PlannedAsync();
        await visit.CopiedAsync();
        await host.DisposeAsync();

        await visit.Page.ReloadAsync();
        var again = await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin with the commented kit" }).ClickAsync();
        var starter = await visit.PlannedAsync(again);
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Example tall-stand.yaml" }).ClickAsync();

        again.Should().Be(hash);
        (await visit.PlannedAsync(starter)).Should().NotBe(again, "kits that come with the page are on the device as well");
        visit.Complaints.Should().BeEmpty();
    }

    /// <summary>The criteria are Chromium's own, as it tells them over its protocol for tools: Page.getInstallabilityErrors and Page.getAppManifest.</summary>
    [BrowserFact]
    public async Task The_page_can_be_installed()
    {
        var folder = Directory.CreateTempSubdirectory("studiokit-visit-");
        await using var visit = await served.RememberedVisitAsync(folder.FullName);
        await visit.CopiedAsync();
        var tools = await visit.ToolsAsync();

        var manifest = (await tools.SendAsync("Page.getAppManifest"))!.Value;
        var errors = (await tools.SendAsync("Page.getInstallabilityErrors"))!.Value;

        manifest.GetProperty("errors").GetArrayLength().Should().Be(0, "{0}", manifest.GetProperty("errors"));
        errors.GetProperty("installabilityErrors").EnumerateArray().Select(error => error.GetProperty("errorId").GetString())
            .Should().BeEmpty();
        await visit.DisposeAsync();
        folder.Delete(recursive: true);
    }

    [BrowserFact]
    public async Task A_newer_page_waits_until_it_is_whole_and_asked_for_and_leaves_the_kits_alone()
    {
        await using var host = await PlainHost.StartAsync();
        await using var visit = await served.VisitAsync(address: host.Address);
        await visit.PlannedAsync();
        await visit.CopiedAsync();
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin with the commented kit" }).ClickAsync();
        await visit.KeptAsync("Saved");

        // Half of a newer page is none: the list promises a file that is another one.
        var sheet = Encoding.UTF8.GetString(host.File("css/kits.css"));
        Publish(host, "half", "css/kits.css", Encoding.UTF8.GetBytes(sheet + "/* never */"), isServed: false);
        var waiting = await visit.Page.EvaluateAsync<bool>("""
            async () => {
                const registration = await navigator.serviceWorker.getRegistration();
                await registration.update().catch(() => { });
                for (let turn = 0; turn < 300 && (registration.installing || (await caches.keys()).length > 1); turn++) {
                    await new Promise((resolve) => setTimeout(resolve, 100));
                }

                return registration.waiting !== null;
            }
            """);
        waiting.Should().BeFalse("it is not whole");
        (await visit.Page.EvaluateAsync<string[]>("async () => (await caches.keys())")).Should().ContainSingle("half a copy is thrown away");

        Publish(host, "newer", "css/kits.css", Encoding.UTF8.GetBytes(sheet + "\n.newer-page-was-taken { color: red; }\n"), isServed: true);
        await visit.Page.EvaluateAsync("async () => (await navigator.serviceWorker.getRegistration()).update()");
        await visit.Page.GetByText("A newer page is ready").WaitForAsync();
        (await HasNewerSheetAsync(visit)).Should().BeFalse("nothing of it is used before it is asked for");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Load it" }).ClickAsync();

        await visit.Page.WaitForFunctionAsync(NewerSheet);
        await visit.KeptAsync("Saved");
        await visit.RoomAsync("Kits");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "my-kit.yaml", Exact = true }).WaitForAsync();
        (await visit.Page.EvaluateAsync<string[]>("async () => (await caches.keys())")).Should().ContainSingle("the older page makes room");
        host.Asked.Count(name => name == "_framework/dotnet.native.wasm").Should().BeLessThanOrEqualTo(3, "what did not change is not fetched anew by a newer page");
    }

    private const string NewerSheet = "() => [...document.styleSheets].some(sheet => [...sheet.cssRules].some(rule => rule.selectorText === '.newer-page-was-taken'))";

    private static Task<bool> HasNewerSheetAsync(Visit visit) => visit.Page.EvaluateAsync<bool>(NewerSheet);

    // What publishing does: the list of files gets a version of its own, and each file's SHA-256 (Subresource Integrity, W3C).
    private static void Publish(PlainHost host, string version, string name, byte[] bytes, bool isServed)
    {
        var list = Encoding.UTF8.GetString(host.File("offline-files.js"));
        list = Version().Replace(list, $"\"version\": \"{version}\"");
        list = Regex.Replace(list, $"(\"hash\": \")[^\"]+(\",\\s+\"url\": \"{Regex.Escape(name)}\")", $"$1sha256-{Convert.ToBase64String(SHA256.HashData(bytes))}$2", RegexOptions.None, TimeSpan.FromSeconds(1));
        host.Replace("offline-files.js", Encoding.UTF8.GetBytes(list));
        if (isServed)
        {
            host.Replace(name, bytes);
        }
    }

    [GeneratedRegex("\"version\": \"[^\"]+\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Version();
}
