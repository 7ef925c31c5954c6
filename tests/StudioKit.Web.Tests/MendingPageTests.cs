using Microsoft.Playwright;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests;

/// <summary>What somebody does about a check that fails: the button that mends it, and the links to the fields that decide it.</summary>
public sealed class MendingPageTests(ServedPage served) : IClassFixture<ServedPage>
{
    private static readonly string Fen = Asked.Demo();

    private static readonly string Narrow = Fen.Replace("width: 600 mm", "width: 250 mm", StringComparison.Ordinal);

    // 300 mm is what the core's own search says of the same text, which its own tests hold to a whole plan.
    [BrowserFact]
    public async Task The_verdicts_button_mends_the_kit_and_undo_takes_it_back()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        var before = await OpenAsync(visit);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Cut the panel to 300 × 400 mm" }).ClickAsync();

        await visit.Page.Locator(".outcome").GetByText("Panel size passes now.", new() { Exact = false }).WaitForAsync();
        (await visit.KeptTextAsync("narrow.yaml")).Should().Be(Fen.Replace("width: 600 mm", "width: 300 mm", StringComparison.Ordinal));
        var mended = await visit.PlannedAsync(before);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        (await visit.PlannedAsync(mended)).Should().Be(before);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_failing_check_leads_to_the_field_that_decides_it()
    {
        await using var visit = await served.VisitAsync();
        await OpenAsync(visit);
        await visit.RoomAsync("Carry and print");

        await visit.Page.Locator(".checks .fieldlinks").GetByRole(AriaRole.Button, new() { Name = "Width", Exact = false }).First.ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'panel.width'");

        await visit.RoomAsync("Carry and print");
        await visit.Page.Locator(".checks .fieldlinks").GetByRole(AriaRole.Button, new() { Name = "Camera pitch", Exact = false }).First.ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => document.activeElement.id === 'set-ups[0].camera-pitch[0]'");
        (await visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Animals", Exact = true }).CountAsync()).Should().Be(1);
        visit.Complaints.Should().BeEmpty();
    }

    private static async Task<string> OpenAsync(Visit visit)
    {
        var first = await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.OpenFilesAsync(("narrow.yaml", System.Text.Encoding.UTF8.GetBytes(Narrow)));
        var planned = await visit.PlannedAsync(first);
        await visit.KeptAsync("Saved");
        return planned;
    }
}
