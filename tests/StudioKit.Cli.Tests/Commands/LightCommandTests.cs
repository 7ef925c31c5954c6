using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

public sealed class LightCommandTests : IDisposable
{
    private const string Kit =
        """
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, mass: 700 g}
        lenses:
          - {name: sallow 60, focal-length: 60 mm, aperture: f/2.8 to f/32, focusing: unit, largest-magnification: 1:1, magnifications: [1:1], mass: 300 g}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", head: 70 mm x 70 mm, mass: 300 g}
          - {name: willow, guide-number: "30 m @ ISO 100, 35 mm", mass: 300 g}
        panel: {width: 300 mm, depth: 300 mm}
        frame: {height: 500 mm}
        site: {ambient: EV 5}
        set-ups:
          - name: white
            kind: white-background
            iso: 500
            lights:
              - {flash: sedge, role: below, distance: 45 cm}
              - {flash: willow, role: above, distance: 40 cm}
        """;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Keys_of_the_json_document_end_in_their_units()
    {
        var run = Light(Kit, "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var light = JsonDocument.Parse(run.Output).RootElement.GetProperty("panelLights")[0];
        light.GetProperty("panelHeightMm").GetDouble().Should().Be(500);
        light.GetProperty("flashes")[0].GetProperty("distanceMm").GetDouble().Should().Be(450);
        var framing = light.GetProperty("framings")[0];
        framing.GetProperty("darkest").GetProperty("marginStops").GetDouble().Should().BeGreaterThanOrEqualTo(1.0 / 3 - 1e-6);
        framing.GetProperty("clippedFraction").GetDouble().Should().Be(1);
        var grid = framing.GetProperty("grid");
        grid.GetProperty("marginsStops").GetArrayLength().Should().Be(grid.GetProperty("columns").GetInt32() * grid.GetProperty("rows").GetInt32());
    }

    /// <summary>Five times a head of 70 mm is 350 mm: plain arithmetic on the five-times rule (common practice).</summary>
    [Fact]
    public void The_table_shows_the_five_times_rule_and_the_margins()
    {
        var run = Light(Kit);

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("350 mm").And.Contain("White margin over the panel").And.Contain("sallow 60");
    }

    [Fact]
    public void A_flash_in_the_ground_is_named_and_ends_with_one()
    {
        var run = Light(Kit.Replace("45 cm", "60 cm", StringComparison.Ordinal));

        run.ExitCode.Should().Be(1);
        run.Error.Should().Contain("sedge reaches 100 mm into the ground.");
    }

    [Fact]
    public void An_unknown_set_up_is_bad_usage_and_the_known_ones_are_named()
    {
        var run = Light(Kit, "--set-up", "whitish");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("'white'");
    }

    [Fact]
    public void A_search_prints_a_place_and_the_lines_to_change()
    {
        var run = Light(Kit, "--search");

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("Lines to change in the kit:").And.Contain("role: below, distance:").And.Contain("of the energy");
    }

    private CommandRun Light(string kit, params string[] more)
    {
        File.WriteAllText(_folder.File("kit.yaml"), kit);
        return CommandRun.Of(["light", _folder.File("kit.yaml"), .. more]);
    }
}
