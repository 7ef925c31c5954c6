using System.Text;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace StudioKit.Web.Tests;

/// <summary>Somebody asks what to build, on a phone: from a limit that cannot be read to a design in the kit, and back.</summary>
public sealed class DesignsPageTests(ServedPage served) : IClassFixture<ServedPage>
{
    private static readonly AxeRunOptions Everything = new() { ResultTypes = [ResultType.Violations] };

    [BrowserFact]
    public async Task A_design_is_found_beside_other_work_looked_at_put_into_the_kit_and_taken_back()
    {
        await using var visit = await served.VisitAsync(width: 390, height: 844);
        var first = await visit.PlannedAsync();
        await visit.RoomAsync("Kits");
        await visit.OpenFilesAsync(("sallow.yaml", Encoding.UTF8.GetBytes(Engine.DesignsTests.Kit)));
        var planned = await visit.PlannedAsync(first);
        await visit.RoomAsync("What to build");
        await visit.Page.GetByText("The kit's own choices: 3 choices, 18 designs.").WaitForAsync();

        // A limit in a unit that nobody here knows is refused where it stands.
        var limit = visit.Page.GetByLabel("at most so much mass carried");
        await limit.FillAsync("3 stone");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Search the designs" }).ClickAsync();
        await visit.Page.GetByText("'stone' is not a unit of mass.", new() { Exact = false }).WaitForAsync();
        await limit.FillAsync("8 kg");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Search the designs" }).ClickAsync();
        await visit.Page.GetByText("All there are: no other design beats one that is shown.").WaitForAsync();

        // The second is chosen by the keyboard.
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Design 2" }).PressAsync("Enter");
        await visit.Page.GetByText("All its figures").ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Hold its plan beside the kit's" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Region, new() { Name = "Both states" }).WaitForAsync();
        (await visit.Page.RunAxe(Everything)).Violations.Select(violation => $"{violation.Id}: {violation.Help}: {string.Join(", ", violation.Nodes.Select(node => node.Html).Take(3))}").Should().BeEmpty();
        (await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth")).Should().BeLessThanOrEqualTo(0, "it fits a phone");
        var table = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save them as a table" }).ClickAsync());
        table.SuggestedFilename.Should().Be("designs.csv");

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it as a kit of its own" }).ClickAsync();
        await visit.Page.GetByText("Kept on this device as sallow-2.yaml", new() { Exact = false }).WaitForAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Put it into the kit" }).ClickAsync();
        await visit.Page.GetByText("The kit is design 2 now.").WaitForAsync();
        var taken = await visit.PlannedAsync(planned);
        await visit.KeptAsync("Saved");
        (await visit.KeptTextAsync("sallow.yaml")).Should().Be(await visit.KeptTextAsync("sallow-2.yaml")).And.Contain("# weighed in spring").And.NotBe(Engine.DesignsTests.Kit);
        await visit.Page.GetByText("as it was when the search began", new() { Exact = false }).WaitForAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        (await visit.PlannedAsync(taken)).Should().Be(planned);
        visit.Complaints.Should().BeEmpty();
    }
}
