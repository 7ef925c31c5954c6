using StudioKit.Physics.Light.Placements;
using StudioKit.Planning.Studio.Placing;

namespace StudioKit.Planning.Tests.Panels;

public sealed class PlacementPlannerTests
{
    private static readonly Plan Studio = LightKit.Plan(LightKit.Yaml(head: "70 mm x 40 mm", pitch: "60°"));

    private static readonly Lazy<PlacementPlan> Found = new(() => PlacementPlanner.Search(Studio, "white")!);

    [Fact]
    public void The_search_finds_nothing_worse_than_the_kits_own_placement()
    {
        var found = Found.Value;

        found.Own.Limit.Should().Be(PlacementLimit.None);
        found.Recommended!.FullPowerFlashes.Should().BeLessThanOrEqualTo(found.Own.FullPowerFlashes);
        found.EnergySaved!.Value.Should().BeInRange(0, 1);
        found.Frontier.Select(choice => choice.FullPowerFlashes).Should().BeInAscendingOrder();
        found.Frontier.Select(choice => choice.Spread.Value).Should().BeInDescendingOrder();
    }

    // Black skirts: the same places are looked at, each in a tenth of the time.
    [Fact]
    public void The_search_finds_always_the_same()
    {
        var black = LightKit.Plan(LightKit.Yaml(head: "70 mm x 40 mm", pitch: "60°").Replace("skirts: no", "skirts: no, skirt-reflectance: 0", StringComparison.Ordinal));

        var (first, second) = (PlacementPlanner.Search(black, "white")!, PlacementPlanner.Search(black, "white")!);

        second.Recommended!.FullPowerFlashes.Should().Be(first.Recommended!.FullPowerFlashes);
        second.KitLines.Should().Equal(first.KitLines);
        second.Frontier.Should().BeEquivalentTo(first.Frontier, places => places.WithStrictOrdering());
    }

    /// <summary>Plain words to plain deeds: what the search prints is put into the kit and read again.</summary>
    [Fact]
    public void The_lines_to_change_are_lines_that_a_kit_accepts()
    {
        var found = Found.Value;
        var line = found.KitLines.Single(line => line.Contains("role: below") && !line.Contains("a second such flash"));
        var light = line[(line.IndexOf("role: below, ", StringComparison.Ordinal) + "role: below, ".Length)..^1];

        var changed = LightKit.Plan(LightKit.Yaml(light, "70 mm x 40 mm", "60°"));

        changed.PanelLights[0].Flashes[0].Distance.Millimeters.Should().BeApproximately(found.Recommended!.Distance.Millimeters, 0.51);
    }

    [Fact]
    public void A_stopped_search_says_so()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        var search = () => PlacementPlanner.Search(Studio, "white", null, stop.Token);

        search.Should().Throw<OperationCanceledException>();
    }

    [Fact]
    public void Only_white_backgrounds_have_a_flash_below_to_place() => PlacementPlanner.Search(Studio, "no such set-up").Should().BeNull();
}
