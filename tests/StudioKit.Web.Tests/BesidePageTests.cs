using System.Text;
using Microsoft.Playwright;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests;

/// <summary>Parts and pins beside a kit, in the browser's own database and in what is exported from it.</summary>
public sealed class BesidePageTests(ServedPage served) : IClassFixture<ServedPage>
{
    private const string Pipe = "name: reed pipe\noutside-diameter: 25 mm\nwall: 1.9 mm\nsource: measured with a caliper\n";

    private const string Head = "TILT=NONE\n1 -1 1 2 1 1 2 0 0 0 1 1 1 0 90 0 5 0\n";

    private static readonly string Own = Asked.Demo().Replace("pipe: pvc-u-25x1.25", "pipe: reed-25", StringComparison.Ordinal)
        .Replace("head: 72 mm x 42 mm", "head: 72 mm x 42 mm\n    light-distribution: sedge.ies", StringComparison.Ordinal);

    [BrowserFact]
    public async Task A_missing_part_is_added_kept_exported_with_its_kit_and_read_back_on_another_device()
    {
        await using var visit = await served.VisitAsync();
        await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.OpenFilesAsync(("fen.yaml", Encoding.UTF8.GetBytes(Own)), ("sedge.ies", Encoding.UTF8.GetBytes(Head)));
        var add = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add the file of reed-25" });
        var chooser = await visit.Page.RunAndWaitForFileChooserAsync(() => add.ClickAsync());
        await chooser.SetFilesAsync([new FilePayload { Name = "reed-25.yaml", MimeType = "text/yaml", Buffer = Encoding.UTF8.GetBytes(Pipe) }]);
        await visit.PlannedAsync();
        await visit.OpenFilesAsync(("fen.correction.yaml", "correction-of: Fen edge\ndate: 2026-05-09\npanel-transmittance: {stops: 0.11, plus-minus: 0.12, before: 0.5, after: 0.54}\n"u8.ToArray()));
        await visit.Page.GetByText("with the corrections of").First.WaitForAsync();
        var planned = await visit.PlannedAsync();

        // Pinned, reloaded: part and pin are there.
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Gear", Exact = true }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this state" }).ClickAsync();
        await visit.Page.GetByText("Both weigh the same.").WaitForAsync();
        await visit.Page.ReloadAsync();
        (await visit.PlannedAsync()).Should().Be(planned);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Gear", Exact = true }).ClickAsync();
        await visit.Page.Locator(".whatif option", new() { HasText = "Pin 1" }).First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        await visit.RoomAsync("Kits");

        // Where the user chooses, too, its part goes with it.
        await visit.Page.EvaluateAsync("""
            () => {
                globalThis.showSaveFilePicker = async ({ suggestedName }) => ({
                    createWritable: async () => ({ write: async (data) => { globalThis.written = [suggestedName, new TextDecoder().decode(data)]; }, close: async () => { globalThis.isWritten = true; } }),
                });
            }
            """);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Choose a place: fen.yaml" }).ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => globalThis.isWritten");
        (await visit.Page.EvaluateAsync<string[]>("() => globalThis.written")).Should().HaveElementAt(0, "fen.zip").And.Contain(written => written.Contains("fen/parts/pipes/reed-25.yaml", StringComparison.Ordinal));

        var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.GetByRole(AriaRole.Button, new() { Name = "Export everything" }).ClickAsync());
        var archive = await File.ReadAllBytesAsync((await download.PathAsync())!);

        await using var other = await served.VisitAsync();
        var first = await other.PlannedAsync();
        await other.RoomAsync("Kits");
        await other.OpenFilesAsync(("kits.zip", archive));
        await other.Page.GetByText("fen.yaml is kept on this device.").WaitForAsync();
        await other.Page.GetByRole(AriaRole.Button, new() { Name = "fen.yaml", Exact = true }).ClickAsync();
        // Kit, part and correction come in one after the other; the plan is the same once all are there.
        await other.Page.Locator($"main[data-plan='{planned}']").WaitForAsync();
        planned.Should().NotBe(first);
        await other.Page.GetByRole(AriaRole.Button, new() { Name = "Gear", Exact = true }).ClickAsync();
        await other.Page.Locator(".whatif option", new() { HasText = "Pin 1" }).First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        using var zip = new System.IO.Compression.ZipArchive(new MemoryStream(archive));
        zip.Entries.Select(entry => entry.FullName).Should().Contain(["fen/fen.yaml", "fen/parts/pipes/reed-25.yaml", "fen/parts/light-distributions/sedge.ies", "fen/pins.json", "corrections/1.correction.yaml"]);
        (visit.Complaints.Count + other.Complaints.Count).Should().Be(0, string.Join(Environment.NewLine, visit.Complaints.Concat(other.Complaints)));
    }
}
