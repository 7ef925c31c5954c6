using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>Every view by the rules of an accessibility engine (WCAG 2.2 A and AA and the engine's own good practice).</summary>
public sealed class AccessibilityTests(ServedPage served) : IClassFixture<ServedPage>
{
    // What passes need not be told, element by element.
    private static readonly AxeRunOptions Everything = new() { ResultTypes = [ResultType.Violations] };
    private static readonly AxeRunOptions ContrastAlone = new() { ResultTypes = [ResultType.Violations], RunOnly = new RunOnlyOptions { Type = "rule", Values = ["color-contrast"] } };

    [BrowserTheory]
    [InlineData(390)]
    [InlineData(1024)]
    public async Task Every_view_can_be_used_by_everybody(int width)
    {
        var visit = await served.SameVisitAsync(width);
        await visit.PlannedAsync();
        foreach (var room in await visit.RoomsAsync())
        {
            await visit.RoomAsync(room);

            Complaints(await visit.Page.RunAxe(Everything)).Should().BeEmpty($"'{room}' is for everybody at {width} wide");
        }

        visit.Complaints.Should().BeEmpty();
    }

    /// <summary>A look changes colours alone, so contrast is what it can break.</summary>
    [BrowserFact]
    public async Task Every_look_can_be_read_in_every_view_and_is_remembered()
    {
        await using var visit = await served.VisitAsync(width: 390);
        foreach (var look in new[] { "Dark", "Sun" })
        {
            await visit.PlannedAsync();
            await visit.Page.GetByLabel("Look").SelectOptionAsync(look);
            await visit.Page.ReloadAsync();
            await visit.PlannedAsync();
            (await visit.Page.GetByLabel("Look").InputValueAsync()).Should().Be(look);
            foreach (var room in await visit.RoomsAsync())
            {
                await visit.RoomAsync(room);

                Complaints(await visit.Page.RunAxe(ContrastAlone)).Should().BeEmpty($"'{room}' can be read in the look '{look}'");
            }
        }

        visit.Complaints.Should().BeEmpty();
    }

    /// <summary>44 by 44 CSS pixels, as WCAG 2.2 has it in success criterion 2.5.5.</summary>
    [BrowserFact]
    public async Task Whatever_is_pressed_is_in_sight_and_large_enough_for_a_thumb()
    {
        var visit = await served.SameVisitAsync(390);
        await visit.PlannedAsync();
        (await visit.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('nav.rooms button')].filter((each) => each.getBoundingClientRect().right > innerWidth).map((each) => each.textContent)
            """)).Should().BeEmpty("a room beyond the edge is not found");
        foreach (var room in await visit.RoomsAsync())
        {
            await visit.RoomAsync(room);

            (await visit.Page.EvaluateAsync<string[]>("""
                () => [...document.querySelectorAll('button, select, summary, input:not([type=hidden])')]
                    .filter((each) => each.getClientRects().length > 0)
                    .map((each) => each.type === 'checkbox' ? each.closest('label') ?? each : each)
                    .filter((each) => each.getBoundingClientRect().height < 43.5)
                    .map((each) => `${each.outerHTML.slice(0, 120)} ${each.getBoundingClientRect().height}`)
                """)).Should().BeEmpty($"'{room}' is used with thumbs");
            (await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth")).Should().BeLessThanOrEqualTo(0, $"'{room}' fits a phone");
        }
    }

    /// <summary>A laptop's and a phone's screen at 200 %, which halves what they have (WCAG 2.2, success criterion 1.4.4).</summary>
    [BrowserTheory]
    [InlineData(512, 384)]
    [InlineData(195, 422)]
    public async Task At_twice_the_size_every_view_fits_the_screen_across(int width, int height)
    {
        var visit = await served.SameVisitAsync(width, height);
        await visit.PlannedAsync();
        foreach (var room in await visit.RoomsAsync())
        {
            await visit.RoomAsync(room);

            (await visit.Page.EvaluateAsync<string[]>("""
                () => document.documentElement.scrollWidth <= innerWidth ? [] : [...document.querySelectorAll('body *')]
                    .filter((each) => each.getBoundingClientRect().right > innerWidth + 1)
                    .map((each) => each.outerHTML.slice(0, 100))
                """)).Should().BeEmpty($"'{room}' is read at twice the size, too");
        }
    }

    private static IEnumerable<string> Complaints(AxeResult result) => result.Violations
        .Select(violation => $"{violation.Id}: {violation.Help}: {string.Join(", ", violation.Nodes.Select(node => node.Html).Take(3))}");
}
