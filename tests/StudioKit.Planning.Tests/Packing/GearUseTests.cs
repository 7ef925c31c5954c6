using StudioKit.Planning.Packing;

namespace StudioKit.Planning.Tests.Packing;

public sealed class GearUseTests
{
    private static readonly Plan Plan = KitText.Demo("fen-edge.yaml");

    [Fact]
    public void A_tube_that_a_framing_is_reached_with_is_needed() =>
        Needs("white", "reed 55 at 1:1").Should().Contain(["reed 55", "tube 27.5", "sedge", "willow", "small softbox"]);

    [Fact]
    public void Frame_panel_and_skirts_are_needed_on_the_panel_and_nowhere_else()
    {
        var studio = Plan.Pack.Items.Where(item => item.Part is not null).Select(item => item.Name).ToList();

        studio.Should().NotBeEmpty();
        Needs("white", "reed 55 at 1:2").Should().Contain(studio);
        Needs("habitat by day", "reed 55 at 1:2").Should().NotContain(studio);
    }

    private static IReadOnlyList<string> Needs(string setUp, string framing) =>
        [.. GearUse.Of(Plan.Exposures.First(exposure => exposure.SetUp == setUp && exposure.Framing.Name == framing)).Needs(Plan.Pack.Items)];
}
