using Microsoft.Playwright;
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
        (await visit.Page.GetByRole(AriaRole.Region, new() { Name = "Verdict" }).GetByRole(AriaRole.Status).TextContentAsync()).Should().Contain("This studio can be built");
        visit.Complaints.Should().BeEmpty();
    }

    /// <summary>Sizes are those of the packed files that lie beside the page's own, as a server sends them; all that is asked for until the first plan counts once, as browsers keep it.</summary>
    [BrowserFact]
    public async Task Until_the_first_plan_at_most_three_and_a_half_megabytes_are_fetched()
    {
        await using var host = await PlainHost.StartAsync();
        await using var visit = await served.VisitAsync(address: host.Address, blockCopy: true);
        await visit.PlannedAsync();

        var fetched = host.Asked.Distinct().Where(name => name.Length > 0).Select(name => (Name: name, Size: PackedSize(name))).OrderByDescending(file => file.Size).ToList();

        fetched.Select(file => file.Name).Should().Contain(["_framework/dotnet.native.wasm", "_framework/StudioKit.Planning.wasm", "kits/fen-edge.yaml"]);
        fetched.Sum(file => file.Size).Should().BeLessThanOrEqualTo(
            3_500_000, "a phone on a bog's edge fetches it all, the largest being {0}", string.Join(", ", fetched.Take(25).Select(file => $"{file.Name} {file.Size}")));
    }

    private static long PackedSize(string name)
    {
        var file = Path.Combine(ServedPage.Folder, name);
        var packed = $"{file}.br";
        return new FileInfo(File.Exists(packed) ? packed : file).Length;
    }
}
