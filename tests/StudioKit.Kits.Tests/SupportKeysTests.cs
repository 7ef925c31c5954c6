using StudioKit.Kits.Supports;

namespace StudioKit.Kits.Tests;

/// <summary>What a camera rests on.</summary>
public sealed class SupportKeysTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed, focal-length: 55 mm}]

        """;

    [Fact]
    public void A_set_up_sways_as_what_its_camera_rests_on_and_else_as_the_hand()
    {
        var kit = Read("""
            flashes: [{name: rush, guide-number: 30 m}]
            supports: [{name: low tripod, kind: tripod, sway: 0.3 mm/s}, {name: oat bag, kind: bean-bag}]
            set-ups:
              - {name: dusk, kind: low-light-fill, support: low tripod, lights: [{flash: rush, role: fill, distance: 1 m}]}
              - {name: noon, kind: daylight-fill, lights: [{flash: rush, role: fill, distance: 1 m}]}
            site: {hand-speed: 4 mm/s}

            """).Kit!;

        kit.SwayOf(kit.SetUps[0]).MillimetersPerSecond.Should().BeApproximately(0.3, 1e-12);
        kit.SwayOf(kit.SetUps[1]).MillimetersPerSecond.Should().BeApproximately(4, 1e-12);
        kit.SteadierThan(kit.SetUps[1])!.Name.Should().Be("low tripod", "the steadiest comes first");
        kit.SteadierThan(kit.SetUps[0]).Should().BeNull("it rests on that");
    }

    [Theory]
    [InlineData(SupportKind.Tripod)]
    [InlineData(SupportKind.Rail)]
    [InlineData(SupportKind.BeanBag)]
    [InlineData(SupportKind.Hand)]
    public void Whatever_a_camera_rests_on_is_steadier_than_the_free_hand_and_that_is_told(SupportKind kind)
    {
        var read = Read($"supports: [{{name: rest, kind: {MemberText.Of(kind)}}}]\n");

        read.Kit!.Supports[0].Sway.Should().BeLessThan(read.Kit.Site.HandSpeed);
        read.Defaults.Should().ContainSingle(used => used.Path == "supports[0].sway").Which.Value.Should().EndWith(" mm/s");
    }

    [Theory]
    [InlineData("supports: [{kind: tripod}]", "name")]
    [InlineData("supports: [{name: post, kind: pole}]", "bean-bag")]
    [InlineData("supports: [{name: post, kind: tripod, sway: -1 mm/s}]", "sway")]
    [InlineData("supports: [{name: post, kind: tripod, sway: 3 mm}]", "speed is needed")]
    [InlineData("supports: [{name: post, kind: tripod}, {name: post, kind: rail}]", "post")]
    [InlineData("supports: [{name: knee, kind: hand, mass: 200 g}]", "Leave 'mass' out")]
    [InlineData("supports: [{name: knee, kind: hand, packed: 200 mm x 100 mm x 50 mm}]", "Leave 'packed' out")]
    [InlineData("supports: [{name: knee, kind: hand, price: 2}]", "Leave 'price' out")]
    [InlineData("set-ups: [{name: dusk, kind: low-light-fill, support: post}]", "post")]
    public void What_cannot_be_is_refused_in_its_line(string text, string says)
    {
        var read = Read(text + "\n");

        read.Kit.Should().BeNull();
        read.Diagnostics.Should().ContainSingle(found => found.Severity == DiagnosticSeverity.Error && (found.Message + found.Hint).Contains(says, StringComparison.Ordinal)).Which.Line.Should().Be(5);
    }

    private static KitReadResult Read(string more) => KitReader.Parse(Text + "\n" + more, "moths.yaml", PartsLibrary.Embedded);
}
