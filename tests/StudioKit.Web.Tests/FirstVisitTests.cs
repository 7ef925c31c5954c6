using StudioKit.Kits;

namespace StudioKit.Web.Tests;

public sealed class FirstVisitTests(ServedPage served) : IClassFixture<ServedPage>
{
    [BrowserFact]
    public async Task The_page_opens_with_a_demo_kit_planned_as_the_command_line_plans_it()
    {
        await using var visit = await served.VisitAsync();

        var hash = await visit.PlannedAsync();

        hash.Should().Be(KitReader.Read(Path.Combine(ServedPage.Folder, "kits", "fen-edge.yaml")).ContentHash);
        (await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Status).TextContentAsync()).Should().Contain("This studio can be built");
        visit.Complaints.Should().BeEmpty();
    }
}
