using System.IO.Compression;
using System.Security.Cryptography;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets;

namespace StudioKit.Web.Tests;

/// <summary>What the browser makes is what the same core makes outside it, to the byte.</summary>
public sealed class SheetsTests(ServedPage served) : IClassFixture<ServedPage>
{
    [BrowserFact]
    public async Task All_sheets_saved_from_the_page_are_those_of_the_core_to_the_byte()
    {
        var visit = await served.SameVisitAsync(1024);
        await visit.PlannedAsync();
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Carry and print" }).ClickAsync();

        var saved = await visit.Page.RunAndWaitForDownloadAsync(
            () => visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Save all in one zip" }).ClickAsync(), new() { Timeout = 240_000 });

        await using var zip = await ZipFile.OpenReadAsync(await saved.PathAsync());
        var native = SheetSet.Write(KitPlanner.Plan(KitReader.Read(Path.Combine(ServedPage.Folder, "kits", "fen-edge.yaml"))), new SheetOptions());
        zip.Entries.Select(entry => $"{entry.FullName} {Hash(entry)}").Should().BeEquivalentTo(native.Select(file => $"{file.Name} {Hash(file.Content.Span)}"));
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Pages_can_be_looked_at_before_they_are_printed()
    {
        var visit = await served.SameVisitAsync(390, 844);
        await visit.PlannedAsync();
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Carry and print" }).ClickAsync();

        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Look at Pack list" }).ClickAsync();

        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Img, new() { Name = "Pack list, page 1 of" }).WaitForAsync();
        visit.Complaints.Should().BeEmpty();
    }

    private static string Hash(ZipArchiveEntry entry)
    {
        using var file = entry.Open();
        return Convert.ToHexString(SHA256.HashData(file));
    }

    private static string Hash(ReadOnlySpan<byte> content) => Convert.ToHexString(SHA256.HashData(content));
}
