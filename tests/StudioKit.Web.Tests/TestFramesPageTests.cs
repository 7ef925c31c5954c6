using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SkiaSharp;

namespace StudioKit.Web.Tests;

public sealed class TestFramesPageTests(ServedPage served) : IClassFixture<ServedPage>
{
    // Three fifths of the width white, the rest one stop under.
    private static readonly FilePayload Panel = new() { Name = "panel.png", MimeType = "image/png", Buffer = new TakenPicture(600, 400, (x, _) => x < 360 ? 0 : 1).Png() };

    [BrowserFact]
    public async Task A_picked_picture_is_read_on_the_phone_and_nothing_is_sent_anywhere()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        await visit.PlannedAsync();
        await OpenAsync(visit);
        await visit.Page.GetByLabel("Bare panel").CheckAsync();
        var sent = new List<string>();
        visit.Page.Context.Request += (_, asked) => sent.Add($"{asked.Method} {asked.Url} {asked.PostDataBuffer?.Length}");

        await visit.Page.GetByLabel("Choose pictures").SetInputFilesAsync(Panel);

        var card = visit.Page.GetByRole(AriaRole.Region, new() { Name = "panel.png" });
        await card.GetByText("NOT WHITE: 1.0 stop under clipping").WaitForAsync();
        (await card.Locator(".bands").TextContentAsync()).Should().Contain("60 %");
        (await card.Locator(".turns li").CountAsync()).Should().BeGreaterThan(0);
        (await card.Locator("canvas").EvaluateAsync<int>("c => c.width")).Should().BeGreaterThan(0);
        (await visit.Page.RunAxe()).Violations.Select(violation => $"{violation.Id}: {violation.Help}").Should().BeEmpty();
        (await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth")).Should().Be(390, "nothing is to be wider than the phone");
        // What the question about frames needs of the page itself is fetched from it; pictures go nowhere.
        sent.Should().OnlyContain(asked => asked.StartsWith($"GET {served.Address}", StringComparison.Ordinal));
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_correction_of_a_ladder_is_planned_with_after_a_reload_until_it_is_removed()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        var asWritten = await visit.PlannedAsync();
        await OpenAsync(visit);
        await visit.Page.GetByLabel("Framing").SelectOptionAsync("reed 55 at 1:2");
        await visit.Page.GetByLabel("Camera looks down by").SelectOptionAsync("60");
        await visit.Page.GetByLabel("Choose pictures").SetInputFilesAsync(
            new[] { (1 / 32.0, 2.0), (1 / 16.0, 1.0), (1 / 8.0, 0.0) }.Select(rung => new FilePayload
            {
                Name = $"panel-1-{1 / rung.Item1}.png",
                MimeType = "image/png",
                Buffer = new TakenPicture(600, 400, (x, y) => rung.Item2 + 0.05 + (0.0005 * (x + y))).Png(),
            }));

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Measure the panel" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it and plan with it" }).WaitForAsync();
        var axe = await visit.Page.RunAxe();
        axe.Violations.Select(violation => $"{violation.Id}: {violation.Help}").Should().BeEmpty();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it and plan with it" }).ClickAsync();
        var corrected = await visit.PlannedAsync(asWritten);
        await visit.Page.ReloadAsync();

        (await visit.PlannedAsync()).Should().Be(corrected);
        await visit.Page.GetByText("with the corrections of").WaitForAsync();
        await OpenAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Remove it and plan without it" }).ClickAsync();
        (await visit.PlannedAsync(corrected)).Should().Be(asWritten);
        visit.Complaints.Should().BeEmpty();
    }

    [BrowserFact]
    public async Task A_picture_that_was_taken_upright_is_seen_upright_with_the_settings_in_its_file()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        await visit.PlannedAsync();
        await OpenAsync(visit);
        await visit.Page.GetByLabel("Bare panel").CheckAsync();

        await visit.Page.GetByLabel("Choose pictures").SetInputFilesAsync(new FilePayload { Name = "upright.jpg", MimeType = "image/jpeg", Buffer = Turned() });

        var card = visit.Page.GetByRole(AriaRole.Region, new() { Name = "upright.jpg" });
        await card.GetByText("400 × 600 pixels; f/11, ISO 200").WaitForAsync();
        // Turned clockwise, the dark rows at the bottom come to lie on the left.
        await card.GetByText("left").First.WaitForAsync();
        (await card.GetByText("The frame was taken at f/11").CountAsync()).Should().Be(1);
        visit.Complaints.Should().BeEmpty();
    }

    // 600 by 400 pixels stored, the lower two fifths of the rows one stop under; orientation 6 (CIPA DC-008): first row right, first column on top.
    private static byte[] Turned()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(600, 400, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.White);
        bitmap.Erase(new SKColor(188, 188, 188), SKRectI.Create(0, 240, 600, 160));
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        byte[] exif =
        [
            .. "Exif\0\0II*\0"u8, 8, 0, 0, 0,
            2, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, 6, 0, 0, 0, 0x69, 0x87, 4, 0, 1, 0, 0, 0, 38, 0, 0, 0, 0, 0, 0, 0,
            2, 0, 0x9D, 0x82, 5, 0, 1, 0, 0, 0, 68, 0, 0, 0, 0x27, 0x88, 3, 0, 1, 0, 0, 0, 200, 0, 0, 0, 0, 0, 0, 0,
            11, 0, 0, 0, 1, 0, 0, 0,
        ];
        return [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. data.ToArray()[2..]];
    }

    private static Task OpenAsync(Visit visit) => visit.Page.GetByRole(AriaRole.Button, new() { Name = "Test frames" }).ClickAsync();
}
