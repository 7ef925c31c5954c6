using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>What the views keep shut until somebody opens it, by the rules of an accessibility engine; one visit through all of it.</summary>
public sealed class OpenedViewsTests(ServedPage served) : IClassFixture<ServedPage>
{
    private static readonly AxeRunOptions Everything = new() { ResultTypes = [ResultType.Violations] };

    [BrowserFact]
    public async Task Forms_texts_and_states_can_be_used_by_everybody_when_they_are_opened()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        await visit.PlannedAsync();
        foreach (var room in new[] { "Gear", "Animals" })
        {
            await visit.RoomAsync(room);
            var groups = visit.Page.Locator(".form > section > .group > [role=heading] > .opener");
            await groups.First.WaitForAsync();
            foreach (var place in Enumerable.Range(0, await groups.CountAsync()))
            {
                await groups.Nth(place).ClickAsync();
                await Assertions.Expect(groups.Nth(place)).ToHaveAttributeAsync("aria-expanded", "true");
                await MeetsAsync(visit, $"{room}, {await groups.Nth(place).TextContentAsync()}", "main .group.open");
            }

            await visit.Page.Locator(".form > section > .add").First.ClickAsync();
            await visit.Page.Locator(".newentry").WaitForAsync();
            await MeetsAsync(visit, $"{room}, a new entry", "main .newentry");
        }

        await visit.RoomAsync("Gear");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Panel", Exact = false }).First.ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Choose: " }).First.ClickAsync();
        await visit.Page.GetByLabel("Search the library").WaitForAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this state" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Region, new() { Name = "Both states" }).WaitForAsync();
        await visit.Page.GetByLabel("Width", new() { Exact = true }).FillAsync("61 kg");
        await visit.Page.GetByText("Not written yet", new() { Exact = false }).WaitForAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Text", Exact = true }).ClickAsync();
        await visit.Page.GetByLabel("As a plain field").CheckAsync();
        var text = visit.Page.Locator("#kit-text");
        await text.FillAsync((await text.InputValueAsync()).Replace("width: 600 mm", "width: 600", StringComparison.Ordinal));
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show where" }).WaitForAsync();
        await MeetsAsync(visit, "the text with something wrong");
        await visit.Page.GetByLabel("As a plain field").UncheckAsync();
        await visit.Page.Locator("#kit-editor .cm-content").WaitForAsync();
        await MeetsAsync(visit, "the same in the editor");
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Sheets_the_field_and_kits_can_be_used_by_everybody_when_they_are_opened()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        await visit.PlannedAsync();
        await visit.RoomAsync("Carry and print");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Look at Pack list" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Img, new() { Name = "Pack list, page 1 of" }).WaitForAsync();
        await MeetsAsync(visit, "a sheet that is looked at");

        await visit.RoomAsync("In the field");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "I hold it now" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Where do I hold the lights" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Img, new() { Name = "Lights and day, page 2 of" }).WaitForAsync();
        await MeetsAsync(visit, "lights and day");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Nothing but the card" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "The scene's light changes" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Slider, new() { Name = "The scene's light" }).WaitForAsync();
        await MeetsAsync(visit, "nothing but the card");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Back to the whole page" }).ClickAsync();

        await visit.RoomAsync("Kits");
        foreach (var example in new[] { "heath-ultralight.yaml", "tall-stand.yaml" })
        {
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = $"Example {example}" }).ClickAsync();
            await visit.Page.GetByText($"{example} is kept on this device").WaitForAsync();
        }

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Throw away: heath-ultralight.yaml" }).ClickAsync();
        await visit.Page.GetByText("Thrown away within a month").ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Rename: fen-edge.yaml" }).ClickAsync();
        await MeetsAsync(visit, "several kits, one thrown away and one being renamed");

        await using var second = await visit.AnotherTabAsync();
        await second.PlannedAsync();
        await second.KeptAsync("Elsewhere");
        await MeetsAsync(second, "a kit that another tab works on");
        visit.Complaints.Should().BeEmpty();
    }

    private static async Task MeetsAsync(Visit visit, string what, string? part = null)
    {
        var found = part is null ? await visit.Page.RunAxe(Everything) : await visit.Page.Locator(part).First.RunAxe(Everything);
        found.Violations.Select(violation => $"{violation.Id}: {violation.Help}: {string.Join(", ", violation.Nodes.Select(node => node.Html).Take(3))}")
            .Should().BeEmpty($"'{what}' is for everybody");
        (await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth")).Should().BeLessThanOrEqualTo(0, $"'{what}' fits a phone");
    }
}
