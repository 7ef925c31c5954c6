using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>The drawings under a finger, by the browser's own touch input.</summary>
public sealed class TouchTests(ServedPage served) : IClassFixture<ServedPage>
{
    [BrowserFact]
    public async Task A_finger_moves_a_flash_while_the_page_stays_and_scrolls_the_page_elsewhere()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844, touch: true);
        var before = await visit.PlannedAsync();
        var tools = await visit.ToolsAsync();
        var mark = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "sedge below, sideways and to the back" });
        var top = await TopAsync(visit);

        var (x, y) = await MiddleAsync(mark);
        await TouchAsync(tools, "touchStart", (x, y));
        await TouchAsync(tools, "touchMove", (x - 10, y - 20));
        await TouchAsync(tools, "touchMove", (x - 20, y - 40));
        await Assertions.Expect(visit.Page.Locator(".standing")).ToContainTextAsync("Preview");
        (await TopAsync(visit)).Should().Be(top, "neither scrolling nor words above may move the drawing from under the finger");
        await TouchAsync(tools, "touchEnd");
        await visit.PlannedAsync(before);
        await visit.Page.Locator("[aria-valuetext*='left of the middle'][aria-valuetext*='back of the middle']").WaitForAsync();

        var map = (await visit.Page.Locator(".from-above .map").BoundingBoxAsync())!;
        await TouchAsync(tools, "touchStart", (map.X + 12, map.Y + 80));
        await TouchAsync(tools, "touchMove", (map.X + 12, map.Y + 50));
        await TouchAsync(tools, "touchMove", (map.X + 12, map.Y - 30));
        await TouchAsync(tools, "touchEnd");
        await visit.Page.WaitForFunctionAsync("() => scrollY > 40");
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task What_a_finger_moved_goes_back_when_the_touch_is_cancelled_and_a_second_finger_moves_nothing()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844, touch: true);
        var before = await visit.PlannedAsync();
        var tools = await visit.ToolsAsync();
        var flash = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "sedge below, sideways and to the back" });
        var edge = visit.Page.GetByRole(AriaRole.Slider, new() { Name = "panel's width" });
        var ((x, y), (u, v)) = (await MiddleAsync(flash), await MiddleAsync(edge));

        await TouchAsync(tools, "touchStart", (x, y));
        await TouchAsync(tools, "touchMove", (x - 30, y));
        await TouchAsync(tools, "touchStart", (x - 30, y), (u, v));
        await TouchAsync(tools, "touchMove", (x - 40, y), (u - 30, v));
        await visit.Page.Locator("[aria-valuetext*='left of the middle']").WaitForAsync();
        (await edge.GetAttributeAsync("transform")).Should().BeNull("one hand at a time");
        await TouchAsync(tools, "touchCancel");

        await Assertions.Expect(flash).ToHaveAttributeAsync("aria-valuetext", "in the middle, in the middle");
        (await flash.GetAttributeAsync("transform")).Should().BeNull();
        (await visit.PlannedAsync()).Should().Be(before);
        visit.Complaints.Should().BeEmpty();
    }

    private static async Task TouchAsync(ICDPSession tools, string type, params (double X, double Y)[] fingers) => await tools.SendAsync("Input.dispatchTouchEvent", new()
    {
        ["type"] = type,
        ["touchPoints"] = fingers.Select((finger, id) => new { x = finger.X, y = finger.Y, id }).ToArray(),
    });

    private static async Task<(double X, double Y)> MiddleAsync(ILocator mark)
    {
        var box = (await mark.Locator(".reach").BoundingBoxAsync())!;
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    private static Task<double> TopAsync(Visit visit) => visit.Page.EvaluateAsync<double>("() => document.querySelector('.from-above svg').getBoundingClientRect().top");
}
