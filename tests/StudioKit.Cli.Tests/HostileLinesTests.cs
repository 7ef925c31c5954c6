using System.Globalization;

namespace StudioKit.Cli.Tests;

/// <summary>Whatever stands behind an option, the command answers with one of its exit codes and a sentence, never with an exception.</summary>
public sealed class HostileLinesTests
{
    private static readonly int Runs = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), CultureInfo.InvariantCulture, out var files) ? files : 100;

    private static readonly string[] Values =
    [
        "", " ", "0", "-1", "NaN", "∞", "1e300", "1e-300", "1e999", "0 mm", "-5 mm", "1e15 mm", "1 nm", "10 km", "55 mm", "55", "55 parsec", "f/0", "f/16", "f/1e300", "1/0", "0/0", "1/8 +1/3",
        "1:0", "0:1", "1:2", "400", "ISO 0", "0.5", "50 %", "-0.5", "+1/3", "1e9", "30 m", "38 m @ ISO 100, 35 m", "36 mm x 24 mm", "0 mm x 0 mm", "24 x", "A6", "@x", "--", "-", "\0", "\u001b[2J",
        "\u202E", "🦋", new string('9', 300), "kits/none.yaml",
    ];

    // A command's own options in a sound line, of which values are exchanged.
    private static readonly string[][] Lines =
    [
        ["optics", "--focal-length", "55 mm", "--extension", "55 mm", "--aperture", "f/16", "--sensor", "36 mm x 24 mm", "--pupil-ratio", "1", "--circle-of-confusion", "0.03 mm", "--wavelength", "550 nm", "--json"],
        ["exposure", "--guide-number", "30 m", "--power", "1/5", "--distance", "45 cm", "--transmittance", "0.5", "--aperture", "f/16", "--magnification", "1", "--iso", "500", "--pupil-ratio", "1", "--outdoor-correction", "0", "--target", "1/3"],
        ["sheets", "nowhere.yaml", "--out", "nowhere", "--paper", "A4", "--cards", "A6", "--units", "metric", "--date", "2027-05-14"],
        ["cut", "--pieces", "nowhere.csv", "--stock", "nowhere.csv", "--kerf", "3 mm", "--trim", "5 mm", "--json"],
        ["parts", "pvc", "--kind", "pipes", "--json"],
        ["words", "light", "--json"],
        ["check", "nowhere.yaml", "--json"],
        ["complete", Repository.Kit("fen-edge.yaml"), "--at", "12:9", "--columns", "bytes", "--beside", "nowhere.yaml", "--json"],
        ["plan", "nowhere.yaml", "--why", "reed", "--set-up", "white"],
        ["help", "plan"],
    ];

    [Fact]
    public void Any_value_of_any_option_ends_in_one_of_the_exit_codes() => (
        from line in Gen.Int[0, Lines.Length - 1]
        from swaps in Gen.Select(Gen.Int[1, 30], Gen.Int[0, Values.Length - 1]).List[1, 3]
        select swaps.Aggregate(Lines[line], (words, swap) => [.. words.Select((word, at) => at == Place(words, swap.Item1) ? Values[swap.Item2] : word)]))
        .Sample(words =>
        {
            var run = CommandRun.Of(words);

            run.ExitCode.Should().BeInRange(0, 3, string.Join(' ', words));
            (run.Output + run.Error).Should().NotBeEmpty().And.NotContain("   at StudioKit").And.NotContain("System.");
        }, iter: Runs, threads: 1);

    private static int Place(string[] words, int chosen) => 1 + ((chosen - 1) % (words.Length - 1));
}
