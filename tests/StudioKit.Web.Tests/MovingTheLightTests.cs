using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Web.Tests.Engine;

namespace StudioKit.Web.Tests;

/// <summary>What is moved on the drawings is written into the kit's text, whose hash counts every comment and line end.</summary>
public sealed class MovingTheLightTests(ServedPage served) : IClassFixture<ServedPage>
{
    private const string Flash = "set-ups[0].lights[0]";

    [BrowserFact]
    public async Task A_flash_dragged_over_the_plan_moves_the_map_at_once_and_on_release_the_kit_keeps_its_comments()
    {
        await using var visit = await served.VisitAsync();
        var before = await visit.PlannedAsync();
        await visit.KeptAsync("Saved");
        var mark = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "sedge below, sideways and to the back" });
        var (still, map) = (await MapAsync(visit), visit.Page.Locator(".from-above .map"));

        var box = (await mark.Locator(".flash").BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.MoveAsync(x, y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(x + 60, y - 20, new() { Steps = 5 });
        await Assertions.Expect(visit.Page.Locator(".standing")).ToContainTextAsync("Preview");
        await visit.Page.WaitForFunctionAsync("still => [...document.querySelectorAll('.from-above .map path')].map(path => path.getAttribute('d')).join() !== still", still);
        await visit.Page.Mouse.UpAsync();
        var after = await visit.PlannedAsync(before);

        var right = int.Parse((await mark.GetAttributeAsync("aria-valuenow"))!, CultureInfo.InvariantCulture);
        var back = (await mark.GetAttributeAsync("aria-valuetext"))!.Split(", ")[1];
        right.Should().BePositive("the flash was drawn to the right");
        back.Should().EndWith("mm back of the middle");
        after.Should().Be(HashOf(KitText.Of(Asked.Demo()).Set($"{Flash}.offset-right", $"{right} mm").After.Set($"{Flash}.offset-back", back[..^" back of the middle".Length]).After.Text));
        await Assertions.Expect(visit.Page.Locator(".standing")).Not.ToContainTextAsync("Preview");
        (await map.CountAsync()).Should().Be(1);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_flash_moved_by_the_keyboard_is_written_once_in_the_kits_own_unit_and_can_be_taken_back()
    {
        await using var visit = await served.VisitAsync(390, 844);
        var before = await visit.PlannedAsync();
        var mark = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "sedge below, window to panel" });

        await visit.KeptAsync("Saved");
        await mark.FocusAsync();
        // All four within one turn of the page, however slow the machine is: presses that a pause divides are two movements.
        await mark.EvaluateAsync("mark => [1, 2, 3, 4].forEach(() => mark.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true, cancelable: true })))");

        var after = await visit.PlannedAsync(before);

        after.Should().Be(HashOf(Asked.Demo().Replace("role: below, distance: 45 cm", "role: below, distance: 43 cm", StringComparison.Ordinal)));
        await Assertions.Expect(mark).ToHaveAttributeAsync("aria-valuetext", "430 mm under the panel");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        (await visit.PlannedAsync(after)).Should().Be(before);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_touched_place_of_the_map_says_which_framings_see_it_and_why_it_is_as_white_as_it_is()
    {
        var visit = await ToLookAtAsync(1024, 768);

        await visit.Page.Locator(".from-above .map").ClickAsync(new() { Position = new() { X = 20, Y = 20 } });

        var point = visit.Page.GetByRole(AriaRole.Region, new() { Name = "The place that was asked about" });
        await Assertions.Expect(point.GetByRole(AriaRole.Status)).ToContainTextAsync("out of the frame");
        await point.GetByText("Why?").ClickAsync();
        await Assertions.Expect(point).ToContainTextAsync("This place against the darkest visible point");
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task The_studio_is_drawn_in_space_only_when_it_is_asked_for()
    {
        await using var visit = await served.VisitAsync();
        var bundles = new List<string>();
        visit.Page.Request += (_, asked) => bundles.Add(asked.Url);
        await visit.PlannedAsync();
        bundles.Should().NotContain(url => url.EndsWith("three.js", StringComparison.Ordinal));

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show the studio in space" }).ClickAsync();

        var canvas = visit.Page.Locator("canvas[data-drawn=true]");
        await canvas.WaitForAsync();
        (await canvas.GetAttributeAsync("aria-label")).Should().Contain("600 × 400 mm");
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task The_room_of_the_light_has_nothing_that_an_accessibility_engine_finds()
    {
        var visit = await ToLookAtAsync(390, 844);
        await visit.Page.Locator(".from-above .map").ClickAsync(new() { Position = new() { X = 20, Y = 20 } });
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "The scene's light changes: what do I turn?" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Slider, new() { Name = "The scene's light" }).WaitForAsync();

        var found = await visit.Page.RunAxe();

        found.Violations.Select(violation => $"{violation.Id}: {string.Join("; ", violation.Nodes.Select(node => node.Html))}").Should().BeEmpty();
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Who_has_no_pointer_asks_about_a_place_by_the_keyboard()
    {
        var visit = await ToLookAtAsync(1024, 768);
        var probe = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "place on the panel that is asked about" });

        await probe.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(probe).ToHaveAttributeAsync("aria-valuenow", "305");
        await visit.Page.Keyboard.PressAsync("ArrowUp");

        var place = visit.Page.GetByRole(AriaRole.Region, new() { Name = "The place that was asked about" }).GetByRole(AriaRole.Heading);
        await Assertions.Expect(place).Not.ToContainTextAsync(", 0 mm");
        await Assertions.Expect(place).ToContainTextAsync("5 mm right, ");
        (await probe.GetAttributeAsync("aria-valuetext")).Should().Contain("in the frame");
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task Escape_puts_back_what_a_hand_still_holds()
    {
        var visit = await ToLookAtAsync(1024, 768);
        var before = await visit.PlannedAsync();
        var mark = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "sedge below, sideways and to the back" });
        var box = (await mark.Locator(".flash").BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));

        await visit.Page.Mouse.MoveAsync(x, y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(x + 60, y, new() { Steps = 3 });
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.Mouse.MoveAsync(x + 80, y, new() { Steps = 3 });
        await visit.Page.Mouse.UpAsync();

        await Assertions.Expect(mark).ToHaveAttributeAsync("aria-valuetext", "in the middle, in the middle");
        (await mark.GetAttributeAsync("transform")).Should().BeNull();
        (await visit.PlannedAsync()).Should().Be(before);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_flash_led_to_where_it_cannot_stand_is_led_back_on_the_same_drawing()
    {
        await using var visit = await served.VisitAsync();
        var before = await visit.PlannedAsync();
        var mark = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "panel's width" });

        await mark.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Home");
        var impossible = await visit.PlannedAsync(before);
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync("through a skirt");
        await mark.FocusAsync();
        for (var press = 0; press < 6; press++)
        {
            await visit.Page.Keyboard.PressAsync("PageUp");
        }

        await visit.PlannedAsync(impossible);
        await Assertions.Expect(mark).ToHaveAttributeAsync("aria-valuetext", "650 mm");
        await Assertions.Expect(visit.Page.Locator("main")).Not.ToContainTextAsync("through a skirt");
        visit.Complaints.Should().BeEmpty();
    }

    // The room as somebody finds it who comes from another, in the visit of all who leave the kit as it is.
    private async Task<Visit> ToLookAtAsync(int width, int height)
    {
        var visit = await served.SameVisitAsync(width, height);
        await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.RoomAsync("Light");
        return visit;
    }

    private static async Task<string> MapAsync(Visit visit) =>
        await visit.Page.EvaluateAsync<string>("() => [...document.querySelectorAll('.from-above .map path')].map(path => path.getAttribute('d')).join()");

    private static string HashOf(string text) => KitReader.Parse(text, "fen-edge.yaml", PartsLibrary.Embedded).ContentHash;
}
