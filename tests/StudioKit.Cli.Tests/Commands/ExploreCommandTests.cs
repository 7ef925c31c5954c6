using System.Text.Json;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Tables;

namespace StudioKit.Cli.Tests.Commands;

public sealed class ExploreCommandTests : IDisposable
{
    private const string Kit =
        """
        kit: Cottongrass mire
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400, mass: 700 g}   # its strap left out
        lenses:
          - {name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:2], mass: 300 g, front-diameter: 5 mm}
        flashes:
          - {name: one, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g}
          - {name: two, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g}
        panel: {transmittance: 0.5, underside-reflectance: 0, width: 500 mm, depth: 400 mm}
        frame: {height: 500 mm}
        site: {ground-reflectance: 0, outdoor-correction: 0 stops, ambient: EV 0, hand-speed: 0 m/s, wind: Beaufort 2}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            camera-pitch: 90°
            lights:
              - {flash: one, role: below, distance: 45 cm}
              - {flash: two, role: above, distance: 40 cm}
        explore:
          measures: [mass, wind]
          choices:
            - {name: width, key: panel.width, values: [460 mm, 500 mm]}
            - {name: thickness, key: panel.thickness, values: [3 mm, 5 mm]}

        """;

    private readonly TemporaryFolder _folder = new();

    public ExploreCommandTests() => File.WriteAllText(_folder.File("kit.yaml"), Kit);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_kit_that_is_taken_is_written_with_its_comments_and_plans_to_the_figures_that_were_shown()
    {
        var shown = Json("--json").GetProperty("designs").EnumerateArray().ToList();

        var run = Explore("--take", "2", "--out", _folder.File("taken.yaml"));

        run.ExitCode.Should().Be(0, run.Error);
        var text = File.ReadAllText(_folder.File("taken.yaml"));
        text.Should().Contain("# its strap left out");
        var plan = KitPlanner.Plan(KitReader.Parse(text, "taken.yaml", PartsLibrary.Embedded));
        plan.Pack.Total.Grams.Should().BeApproximately(shown[1].GetProperty("massG").GetDouble(), 0.5);
        Explore("--take", shown[1].GetProperty("design").GetString()!, "--out", _folder.File("again.yaml")).ExitCode.Should().Be(0);
        File.ReadAllText(_folder.File("again.yaml")).Should().Be(text);
    }

    [Fact]
    public void The_kit_that_is_explored_is_never_replaced_and_another_file_only_when_asked()
    {
        Explore("--take", "1", "--out", _folder.File("kit.yaml"), "--force").ExitCode.Should().Be(3);
        File.ReadAllText(_folder.File("kit.yaml")).Should().Be(Kit);

        File.WriteAllText(_folder.File("mine.yaml"), "mine");
        Explore("--take", "1", "--out", _folder.File("mine.yaml")).ExitCode.Should().Be(3);
        File.ReadAllText(_folder.File("mine.yaml")).Should().Be("mine");
    }

    [Fact]
    public void Table_csv_and_json_show_the_same_designs()
    {
        var document = Json("--json");
        var rows = CsvText.Read(Explore("--csv").Output);
        var table = Explore().Output;

        var codes = document.GetProperty("designs").EnumerateArray().Select(design => design.GetProperty("design").GetString()).ToList();
        codes.Should().HaveCountGreaterThan(1);
        rows.Skip(2).Select(row => row[1].Text).Should().Equal(codes);
        table.Should().ContainAll(codes).And.Contain("saves").And.Contain("4 of 4 designs were tried").And.Contain("Which choice matters");
        document.GetProperty("search").GetProperty("complete").GetBoolean().Should().BeTrue();
    }

    [Fact]
    public void The_lightest_is_one_line_and_a_limit_that_none_keeps_ends_with_one()
    {
        var lightest = Explore("--lightest");
        var none = Explore("--lightest", "--limit", "mass 1 kg");

        lightest.ExitCode.Should().Be(0, lightest.Error);
        lightest.Output.Trim().Split('\n').Should().ContainSingle().Which.Should().StartWith("3.72 kg: width: 460 mm");
        none.ExitCode.Should().Be(1);
        none.Output.Should().BeEmpty();
        none.Error.Should().Contain("The best that stand, each by itself: mass carried 3.72 kg");
    }

    [Fact]
    public void Designs_are_drawn_as_a_picture()
    {
        var run = Explore("--plot", _folder.File("designs.svg"));

        run.ExitCode.Should().Be(0, run.Error);
        File.ReadAllText(_folder.File("designs.svg")).Should().Contain("mass carried, kg").And.Contain("wind, m/s");
    }

    [Theory]
    [InlineData("Did you mean 'mass'?", "--compare", "mas,wind")]
    [InlineData("two to four measures", "--compare", "mass")]
    [InlineData("no unit", "--limit", "mass 3")]
    [InlineData("each ask for one design", "--lightest", "--cheapest")]
    [InlineData("say where with --out", "--take", "1")]
    [InlineData("say which design", "--out", "x.yaml")]
    [InlineData("no figure for 'price'", "--cheapest")]
    [InlineData("there is no design '77'", "--take", "77", "--out", "x.yaml")]
    [InlineData("whole number from 1", "--most", "0")]
    public void What_makes_no_sense_is_refused_with_what_would(string why, params string[] options)
    {
        var run = Explore(options);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(why);
    }

    [Fact]
    public void A_choice_of_what_the_kit_has_not_is_told_with_its_line()
    {
        File.WriteAllText(_folder.File("kit.yaml"), Kit.Replace("panel.thickness", "panel.thick", StringComparison.Ordinal));

        var run = Explore();

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain($"kit.yaml({Array.FindIndex(Kit.Split('\n'), line => line.Contains("name: thickness")) + 1},").And.Contain("'thick' is not a key of 'panel'");
    }

    [Fact]
    public void Of_several_kits_it_tells_what_their_studios_share_and_refuses_what_is_about_one()
    {
        var kit = _folder.File("kit.yaml");

        var run = CommandRun.Of("explore", kit, kit, "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var document = JsonDocument.Parse(run.Output).RootElement;
        document.GetProperty("stations").EnumerateArray().Select(name => name.GetString()).Should().Equal("Cottongrass mire", "Cottongrass mire (2)");
        document.GetProperty("alike").GetArrayLength().Should().BePositive();
        CommandRun.Of("explore", kit, kit).Output.Should().Contain("Alike, so that a spare fits them all").And.Contain("One of each does for all who take turns");
        var refused = CommandRun.Of("explore", kit, kit, "--take", "1", "--out", _folder.File("x.yaml"));
        refused.ExitCode.Should().Be(2);
        refused.Error.Should().Contain("--take is about the designs of one kit");
    }

    /// <summary>
    /// Codes 99, 137 and 188 are an eighth, a quarter and a half of saturation (IEC 61966-2-1), so each ladder clips evenly a stop over its highest power: one at 1/4, the
    /// other at 1/8. So as one kit they lie a stop apart, and a stop of power, three clicks, makes them one.
    /// </summary>
    [Fact]
    public void Ladders_of_two_stations_are_brought_to_one_white_in_table_csv_and_json()
    {
        var kit = _folder.File("kit.yaml");
        string[] start = ["explore", kit, kit, "--ladder", Ladder("near", "1-8", "1-16", "1-32"), "--ladder", Ladder("far", "1-16", "1-32", "1-64"), "--target", "2/3"];

        var run = CommandRun.Of([.. start, "--json"]);

        run.ExitCode.Should().Be(0, run.Error + run.Output);
        var white = JsonDocument.Parse(run.Output).RootElement;
        var stations = white.GetProperty("stations").EnumerateArray().ToList();
        stations.Select(station => station.GetProperty("station").GetString()).Should().Equal("Cottongrass mire", "Cottongrass mire (2)");
        stations.Select(station => station.GetProperty("measured").GetProperty("whiteMarginStops").GetDouble()).Should().OnlyContain(margin => Math.Abs(margin + 1) < 0.05);
        (Before(stations[1]) - Before(stations[0])).Should().BeApproximately(1, 0.05);
        (After(stations[0], "powerFraction") / After(stations[1], "powerFraction")).Should().BeApproximately(2, 1e-6);
        After(stations[0], "whiteMarginStops").Should().BeApproximately(2.0 / 3, (1.0 / 6) + 1e-6, "thirds of a stop are what the dial has");
        white.GetProperty("spreadBefore").GetProperty("rangeStops").GetDouble().Should().BeApproximately(1, 0.05);
        white.GetProperty("spreadAfter").GetProperty("rangeStops").GetDouble().Should().BeLessThan(0.05);
        white.GetProperty("oneWhite").GetBoolean().Should().BeTrue();

        CommandRun.Of(start).Output.Should().Contain("One white: 0.67 stop over clipping at the darkest place, as asked for, ± 0.33").And.Contain("ISO 14253-1");
        var table = CsvText.Read(CommandRun.Of([.. start, "--csv"]).Output);
        table.Should().HaveCount(3);
        table[2][^1].Text.Should().Be("within");
        table[1].Count.Should().Be(table[0].Count);

        var strict = CommandRun.Of([.. start, "--tolerance", "0.05 stop"]);
        strict.ExitCode.Should().Be(1);
        strict.Error.Should().Contain("check fails: not shown to be one white: Cottongrass mire, Cottongrass mire (2).");

        double Before(JsonElement station) => station.GetProperty("before").GetProperty("whiteMarginStops").GetDouble();
        double After(JsonElement station, string key) => station.GetProperty("after").GetProperty(key).GetDouble();
    }

    [Theory]
    [InlineData("kit.yaml has no ladder: 2 kits but 1 ladder", 2, true, "--ladder near")]
    [InlineData("There is no kit for", 2, true, "--ladder near --ladder near --ladder near")]
    [InlineData("Of one kit 'studiokit photo --ladder'", 2, false, "--ladder near")]
    [InlineData("--tolerance is about measured stations", 2, true, "--tolerance 1/3")]
    [InlineData("2 kits but 3 of --framing", 2, true, "--ladder near --ladder near --framing a --framing b --framing c")]
    [InlineData("--pitch: ", 2, true, "--ladder near --ladder near --pitch steep")]
    [InlineData("--take is about the designs of one kit", 2, true, "--ladder near --ladder near --take 1")]
    [InlineData("FLD236: There is no picture in it", 2, true, "--ladder near --ladder empty")]
    [InlineData("there is no such folder", 3, true, "--ladder near --ladder gone")]
    [InlineData("white: FLD234: The darkest place is white in every picture", 2, true, "--ladder near --ladder white")]
    [InlineData("FLD107", 2, true, "--ladder near --ladder unnamed")]
    [InlineData("has no framing 'rush 60 at 9:1'", 2, true, "--ladder near --ladder near --framing \"rush 60 at 9:1\"")]
    [InlineData("far: FLD235: It lies", 2, true, "--ladder near --ladder far")]
    public void Ladders_that_do_not_go_with_their_kits_are_refused_with_what_would(string said, int code, bool areTwo, string options)
    {
        Ladder("near", "1-8", "1-16", "1-32");
        Ladder("far", "1-1", "1-2", "1-4");
        Ladder("unnamed", "a", "b", "c");
        Directory.CreateDirectory(_folder.File("empty"));
        foreach (var name in new[] { "1-4", "1-8", "1-16" })
        {
            _folder.GreyPicture($"white/panel-{name}.png", 480, 320, 255);
        }

        var kit = _folder.File("kit.yaml");
        string[] folders = ["near", "far", "unnamed", "empty", "white", "gone"];
        var run = CommandRun.Of(["explore", kit, .. areTwo ? [kit] : Array.Empty<string>(), .. Words(options).Select(word => folders.Contains(word) ? _folder.File(word) : word)]);

        run.ExitCode.Should().Be(code, run.Error);
        run.Error.Should().Contain(said);
        run.Output.Should().BeEmpty();
    }

    private static IEnumerable<string> Words(string line) => line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    // Half, a quarter and an eighth of saturation, at the powers named.
    private string Ladder(string folder, params string[] powers)
    {
        foreach (var (power, code) in powers.Zip<string, byte>([188, 137, 99]))
        {
            _folder.GreyPicture($"{folder}/panel-{power}.png", 480, 320, code);
        }

        return _folder.File(folder);
    }

    private JsonElement Json(params string[] options)
    {
        var run = Explore(options);
        run.ExitCode.Should().Be(0, run.Error);
        return JsonDocument.Parse(run.Output).RootElement;
    }

    private CommandRun Explore(params string[] options) => CommandRun.Of(["explore", _folder.File("kit.yaml"), .. options]);
}
