using Microsoft.Playwright;
using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Web.Tests;

public sealed class FieldTests(ServedPage served) : IClassFixture<ServedPage>
{
    [BrowserFact]
    public async Task The_card_in_the_field_is_the_closest_framing_that_shows_the_animal_whole()
    {
        var visit = await served.SameVisitAsync(390, 844);
        await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.RoomAsync("In the field");

        // A spider of 60 mm: 36 mm × 24 mm of sensor show 72 mm at 1:2 and 36 mm at 1:1.
        await visit.Page.GetByLabel("Animal").SelectOptionAsync("raft spider");

        var card = visit.Page.Locator(".bigcard");
        await Assertions.Expect(card.GetByRole(AriaRole.Heading)).ToContainTextAsync("1:2");
        var heading = (await card.GetByRole(AriaRole.Heading).TextContentAsync())!;
        var exposure = KitPlanner.Plan(KitReader.Read(Path.Combine(ServedPage.Folder, "kits", "fen-edge.yaml"))).Exposures
            .First(each => each.SetUp == "white" && heading.StartsWith(each.Framing.Name, StringComparison.Ordinal));
        (await card.Locator(".settings").TextContentAsync()).Should().Contain(exposure.Aperture.Nominal).And.Contain(exposure.Shutter.Nominal);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Outdoors_nothing_but_the_card_is_on_the_screen_and_says_what_to_turn_when_clouds_come()
    {
        var visit = await served.SameVisitAsync(390, 844);
        await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.RoomAsync("In the field");

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Nothing but the card" }).ClickAsync();

        await Assertions.Expect(visit.Page.Locator("nav.rooms")).ToBeHiddenAsync();
        await Assertions.Expect(visit.Page.Locator(".verdict")).ToBeVisibleAsync();
        (await visit.Page.Locator(".bigcard .settings").BoundingBoxAsync())!.Y.Should().BeLessThan(844 - 100, "the settings are in sight without scrolling");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "The scene's light changes" }).ClickAsync();
        var light = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "The scene's light" });
        await light.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowLeft");
        await visit.Page.Locator("[aria-valuetext*='1 stop darker, cloudier']").WaitForAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Back to the whole page" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("nav.rooms")).ToBeVisibleAsync();
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_held_animal_is_counted_on_after_a_reload()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        await visit.PlannedAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "In the field" }).ClickAsync();
        await visit.Page.GetByLabel("Animal").SelectOptionAsync("common frog");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "I hold it now" }).ClickAsync();

        await visit.Page.ReloadAsync();
        await visit.PlannedAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "In the field" }).ClickAsync();

        await visit.Page.GetByText("common frog, held for").WaitForAsync();
        (await visit.Page.Locator(".count").TextContentAsync()).Should().EndWith("of 5:00");
    }
}
