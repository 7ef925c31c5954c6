using System.Text.Json;
using System.Text.RegularExpressions;

namespace StudioKit.Cli.Tests.Commands;

/// <summary>What scripts and people rely on in <c>optics</c>, <c>exposure</c> and <c>plan</c>.</summary>
public sealed partial class PlanCommandTests
{
    private const string Framing = "reed 55 at 1:1";

    [Fact]
    public void No_head_of_the_exposures_is_cut_off_where_nobody_looks() =>
        CommandRun.Of("plan", Repository.Kit("fen-edge.yaml")).Output.Should().Contain(" aperture ").And.NotContain("apertu…").And.NotContain("bright…");

    [Fact]
    public void Optics_prints_the_keys_that_scripts_rely_on()
    {
        var keys = Keys(CommandRun.Of(
            "optics", "--focal-length", "55 mm", "--extension", "55 mm", "--aperture", "f/16", "--sensor", "36 mm x 24 mm", "--json"));

        keys.Should().Contain([
            "magnification", "extensionMm", "objectDistanceMm", "effectiveFNumber", "exposureLossStops", "fieldWidthMm", "fieldHeightMm",
            "depthOfFieldMm", "airyDiscUm"]);
    }

    // Thin lens: u = f·(1 + 1/m) = 110 mm, N_e = N·(1 + m) = 32, loss 2 stops, field = sensor; Airy 2.44·0.55 µm·32 = 42.944 µm.
    [Theory]
    [InlineData("magnification", 1)]
    [InlineData("objectDistanceMm", 110)]
    [InlineData("effectiveFNumber", 32)]
    [InlineData("exposureLossStops", 2)]
    [InlineData("fieldWidthMm", 36)]
    [InlineData("airyDiscUm", 42.944)]
    [InlineData("rayleighSeparationUm", 21.472)]
    [InlineData("rayleighSeparationAtSubjectUm", 21.472)]
    public void Optics_of_a_55_mm_lens_at_life_size_is_textbook(string key, double expected)
    {
        var run = CommandRun.Of(
            "optics", "--focal-length", "55 mm", "--extension", "55 mm", "--aperture", "f/16", "--sensor", "36 mm x 24 mm", "--json");

        Root(run).GetProperty(key).GetDouble().Should().BeApproximately(expected, 1e-6 * expected);
    }

    // The help promises that f/11 is 11: at life size f/22 effective, not 22.63; 1.22 · 0.55 µm · 22 = 14.762 µm.
    [Fact]
    public void Optics_takes_an_f_number_as_typed()
    {
        string[] args = ["optics", "--focal-length", "55 mm", "--extension", "55 mm", "--aperture", "f/11", "--sensor", "36 mm x 24 mm", "--json"];

        CommandRun.Of("optics", "--help").Output.Should().Contain("f/11 is 11");
        Root(CommandRun.Of(args)).GetProperty("effectiveFNumber").GetDouble().Should().BeApproximately(22, 1e-6);
        Root(CommandRun.Of(args)).GetProperty("rayleighSeparationUm").GetDouble().Should().BeApproximately(14.762, 1e-5);
    }

    // A 15 mm lens before a mirror, 44 mm from mount to sensor, must be a retrofocus lens; nobody said how its pupils and planes lie.
    [Fact]
    public void Optics_shows_what_it_assumed_of_a_lens()
    {
        string[] args = ["optics", "--focal-length", "15 mm", "--extension", "3.75 mm", "--aperture", "f/11", "--sensor", "36 mm x 24 mm"];

        CommandRun.Of(args).Output.Should().Contain("Assumed of the lens").And.Contain("pupil ratio").And.Contain("principal planes").And.Contain("±");
        var root = Root(CommandRun.Of([.. args, "--json"]));
        root.GetProperty("assumptions").EnumerateArray().Select(each => each.GetProperty("kind").GetString())
            .Should().Equal("front-glass-to-mount", "principal-planes", "pupil-ratio");
        root.GetProperty("exposureLossStops").GetDouble().Should().BeLessThan(0.64, "pupils alike would lose 2·log₂ 1.25");
        var given = Root(CommandRun.Of([.. args, "--pupil-ratio", "1", "--json"]));
        given.GetProperty("exposureLossStops").GetDouble().Should().BeApproximately(2 * Math.Log2(1.25), 1e-6);
        given.GetProperty("exposureUncertaintyStops").GetDouble().Should().BeApproximately(0, 1e-9);
    }

    // The third stops behind the marks would lie exactly one stop apart; the numbers themselves lie 2·log₂(16/11) = 1.081 apart.
    [Fact]
    public void Exposure_takes_f_number_and_power_as_typed()
    {
        CommandRun.Of("exposure", "--help").Output.Should().Contain("f/11 is 11").And.Contain("1/5 is 0.2");

        (Margin("1/5", "f/11") - Margin("1/5", "f/16")).Should().BeApproximately(2 * Math.Log2(16.0 / 11), 1e-5);
        (Margin("1/4", "f/11") - Margin("1/5", "f/11")).Should().BeApproximately(Math.Log2(5.0 / 4), 1e-5);

        double Margin(string power, string aperture) => Root(CommandRun.Of(
            "exposure", "--guide-number", "30 m", "--power", power, "--distance", "45 cm", "--transmittance", "0.5", "--aperture", aperture,
            "--magnification", "1", "--iso", "500", "--json")).GetProperty("whiteMarginStops").GetDouble();
    }

    // Four thirds of a stop apart in ISO; a margin of hundredths that is known to 0.6 stop is a coin toss, and no white.
    [Theory]
    [InlineData("200", "not-white", "stays grey")]
    [InlineData("500", "at-the-edge", "at the edge")]
    [InlineData("800", "white", "burns out to white, with")]
    public void A_margin_within_its_uncertainty_is_called_neither_white_nor_grey(string iso, string whiteness, string words)
    {
        string[] args =
        [
            "exposure", "--guide-number", "30 m", "--power", "1/5", "--distance", "45 cm", "--transmittance", "0.5", "--aperture", "f/16", "--magnification", "1", "--iso", iso,
        ];
        var root = Root(CommandRun.Of([.. args, "--json"]));
        var (margin, uncertainty) = (root.GetProperty("whiteMarginStops").GetDouble(), root.GetProperty("uncertaintyStops").GetDouble());

        root.GetProperty("whiteness").GetString().Should().Be(whiteness);
        root.GetProperty("targetStops").GetDouble().Should().BeApproximately(1.0 / 3, 1e-6);
        root.GetProperty("whiteProbability").GetDouble().Should().BeApproximately(Normal(margin / uncertainty), 1e-3);
        CommandRun.Of(args).Output.Should().Contain(words);
    }

    // The normal distribution by the trapezium rule.
    private static double Normal(double z) =>
        0.5 + (Enumerable.Range(0, 1000).Sum(i => Math.Exp(-Math.Pow(z * (i + 0.5) / 1000, 2) / 2)) * z / 1000 / Math.Sqrt(2 * Math.PI));

    [Fact]
    public void The_lines_of_the_light_budget_add_up_to_the_white_margin()
    {
        var root = Root(CommandRun.Of(
            "exposure", "--guide-number", "30 m", "--power", "1/5", "--distance", "45 cm", "--transmittance", "0.5", "--aperture", "f/16",
            "--magnification", "1", "--iso", "500", "--json"));

        // Seven significant digits are printed of each of about a dozen lines.
        var sum = root.GetProperty("lightBudget").EnumerateArray().Sum(line => line.GetProperty("stops").GetDouble());
        sum.Should().BeApproximately(root.GetProperty("whiteMarginStops").GetDouble(), 1e-5);
    }

    [Fact]
    public void Plan_prints_the_keys_that_scripts_rely_on()
    {
        var root = Root(CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--json"));

        Names(root).Should().Contain(["kit", "contentHash", "stands", "panel", "framings", "exposures", "depthCurves", "pack", "checks", "defaults"]);
        Names(root.GetProperty("framings")[0]).Should().Contain(["name", "lens", "magnification", "reached", "workingDistanceMm", "fieldWidthMm"]);
        var exposure = root.GetProperty("exposures")[0];
        Names(exposure).Should().Contain([
            "setUp", "framing", "works", "verdict", "advice", "fNumber", "shutterS", "isoSpeed", "whiteMarginStops", "ambientEv100", "uncertaintyStops", "bracketStops",
            "lights", "sharpness", "sharpnessCurve"]);
        Names(exposure.GetProperty("lights")[0]).Should().Contain(["flash", "role", "power", "powerFraction", "distanceMm", "uncertaintyStops", "lightBudget"]);
        Names(exposure.GetProperty("lights")[0].GetProperty("lightBudget")[0]).Should().Equal("item", "stops", "uncertaintyStops", "detail", "source");
    }

    /// <remarks>A lens that stops at 1:2 can't reach life size, and nothing else is on hand: the kit is sound, its plan is not.</remarks>
    [Fact]
    public void A_plan_that_fails_a_check_says_which_and_leaves_with_one()
    {
        using var folder = new TemporaryFolder();
        var kit = folder.File("pool.yaml");
        File.WriteAllText(kit, """
            kit: Heath pool
            camera: {name: body R, sensor: 36 mm x 24 mm}
            lenses: [{name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:1]}]
            flashes: [{name: sedge, guide-number: "30 m @ ISO 100"}]
            set-ups: [{name: dark, kind: dark-background, lights: [{flash: sedge, role: key, distance: 40 cm}, {flash: sedge, role: rim, distance: 40 cm}]}]
            """);

        var run = CommandRun.Of("plan", kit);

        run.ExitCode.Should().Be(1);
        run.Error.Should().Contain("check fails: Magnification, reed 50: 1:1 asked; not reached. Everything on hand together");
        run.Output.Should().Contain("FAILS");
    }

    [Fact]
    public void Every_set_up_of_every_demo_kit_works()
    {
        foreach (var kit in new[] { "fen-edge.yaml", "heath-ultralight.yaml" })
        {
            Root(CommandRun.Once("plan", Repository.Kit(kit), "--json")).GetProperty("exposures").EnumerateArray()
                .Where(exposure => !exposure.GetProperty("works").GetBoolean())
                .Select(exposure => $"{kit}: {exposure.GetProperty("setUp")} {exposure.GetProperty("framing")}: {exposure.GetProperty("verdict")}")
                .Should().BeEmpty();
        }
    }

    [Fact]
    public void Why_prints_every_line_of_every_flash_with_its_source()
    {
        var run = CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--why", Framing, "--set-up", "white");

        run.ExitCode.Should().Be(0);
        run.Output.Should().ContainAll("Guide number", "Panel transmittance", "Close focus", "white margin", "Modifier", "[1] ", "ISO 12232", "give or take");
    }

    [Fact]
    public void Why_as_JSON_holds_the_same_budget_as_the_plan()
    {
        var why = Root(CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--why", Framing, "--set-up", "white", "--json"));
        var plan = Root(CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--json"));

        var same = plan.GetProperty("exposures").EnumerateArray().Single(exposure =>
            exposure.GetProperty("setUp").GetString() == "white" && exposure.GetProperty("framing").GetString() == Framing);
        why.GetProperty("exposures")[0].GetRawText().Should().Be(same.GetRawText());
    }

    [Fact]
    public void Why_helps_with_a_mistyped_framing()
    {
        var run = CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--why", "red 55 at 1:1");

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("Did you mean 'reed 55 at 1:1'?").And.Contain("alder 180 at 1:2");
    }

    [Fact]
    public void Why_and_compare_exclude_each_other() =>
        CommandRun.Of("plan", "a.yaml", "--why", "x", "--compare", "b.yaml").ExitCode.Should().Be(2);

    [Fact]
    public void Compare_puts_two_kits_side_by_side()
    {
        var run = CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--compare", Repository.Kit("heath-ultralight.yaml"));

        run.ExitCode.Should().Be(0);
        run.Output.Should().ContainAll("Fen edge", "Heath ultralight", "mass", "panel", "lighter");
    }

    [Fact]
    public void A_kit_compared_with_itself_differs_in_nothing()
    {
        var kit = Repository.Kit("fen-edge.yaml");
        var root = Root(CommandRun.Once("plan", kit, "--compare", kit, "--json"));

        root.GetProperty("massDifferenceG").GetDouble().Should().Be(0);
        root.GetProperty("lines").EnumerateArray().Should().NotContain(line => line.GetProperty("differs").GetBoolean());
    }

    [Fact]
    public void Every_number_of_an_explanation_carries_its_unit()
    {
        var output = CommandRun.Once("plan", Repository.Kit("fen-edge.yaml"), "--why", Framing, "--set-up", "black").Output;

        // Notes below the tables are sentences; a number in one must not stand bare before a full stop or comma.
        var notes = output.Split('\n').Where(line => line.StartsWith("Ambient", StringComparison.Ordinal) || line.StartsWith("The whole", StringComparison.Ordinal)).ToList();
        notes.Should().NotBeEmpty();
        notes.Should().NotContain(line => BareNumber().IsMatch(line));
    }

    [GeneratedRegex(@"(?<!EV )(?<![\d.])\d+(\.\d+)?[,;]( |$)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BareNumber();

    private static JsonElement Root(CommandRun run) => JsonDocument.Parse(run.Output).RootElement;

    private static IEnumerable<string> Keys(CommandRun run) => Names(Root(run));

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
