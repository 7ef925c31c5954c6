using System.Text.Json;

namespace StudioKit.Cli.Tests;

public sealed class UsageTests
{
    [Fact]
    public void An_unknown_command_is_bad_usage_and_says_where_help_is()
    {
        var run = CommandRun.Of("plann");

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("plann").And.Contain("Try 'studiokit --help'.");
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public void Completion_lines_ask_the_command_itself(string shell)
    {
        var run = CommandRun.Of("completion", shell);

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("[suggest:");
    }

    [Fact]
    public void The_suggestions_hold_the_subcommands()
    {
        var run = CommandRun.Of("[suggest:14]", "studiokit comp");

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("completion");
    }

    [Fact]
    public void Help_of_the_command_itself_names_every_subcommand()
    {
        var run = CommandRun.Of("--help");

        run.Output.Should().ContainAll("new", "check", "schema", "plan", "sheets", "optics", "exposure", "cut", "photo", "calibrate", "scale", "log");
    }

    [Theory]
    [InlineData("new")]
    [InlineData("check")]
    [InlineData("schema")]
    [InlineData("plan")]
    [InlineData("sheets")]
    [InlineData("optics")]
    [InlineData("exposure")]
    [InlineData("cut")]
    [InlineData("photo")]
    [InlineData("calibrate")]
    [InlineData("scale")]
    [InlineData("log")]
    [InlineData("completion")]
    public void Help_of_every_subcommand_has_an_example(string subcommand)
    {
        var run = CommandRun.Of(subcommand, "--help");

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain($"studiokit {subcommand}").And.Contain("Example");
    }

    [Fact]
    public void Without_a_word_the_command_shows_what_it_can_do()
    {
        var run = CommandRun.Of();

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("plan").And.Contain("help exit-codes");
    }

    [Theory]
    [InlineData("plan", "--why", "reeed")]
    [InlineData("light", "--set-up", "wite")]
    public void A_name_that_the_plan_does_not_have_is_told_of_in_json_with_the_likely_one(string command, params string[] options)
    {
        var run = CommandRun.Of([command, Repository.Kit("heath-ultralight.yaml"), .. options, "--json"]);

        run.ExitCode.Should().Be(2);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("diagnostics")[0].GetProperty("message").GetString().Should().Contain(options[1]);
    }

    [Fact]
    public void A_document_that_a_command_could_not_fill_says_why()
    {
        var run = CommandRun.Of("photo", "nowhere.jpg", "--json");

        run.ExitCode.Should().Be(3);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("exitCode").GetInt32().Should().Be(3);
        json.RootElement.GetProperty("diagnostics")[0].GetProperty("file").GetString().Should().Contain("nowhere.jpg");
    }

    [Fact]
    public void A_missing_option_is_bad_usage_and_points_to_the_subcommands_help()
    {
        var run = CommandRun.Of("sheets", "kit.yaml");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--out").And.Contain("Try 'studiokit sheets --help'.");
    }

    [Fact]
    public void A_length_without_a_unit_is_bad_usage_and_names_the_option()
    {
        var run = CommandRun.Of("optics", "--focal-length", "55", "--extension", "55 mm", "--aperture", "f/16", "--sensor", "36 mm x 24 mm");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--focal-length").And.Contain("mm");
    }

    [Theory]
    [InlineData("plna", "'plan'")]
    [InlineData("shets", "'sheets'")]
    [InlineData("calibrat", "'calibrate'")]
    public void A_mistyped_command_is_answered_with_the_one_that_was_likely_meant(string written, string meant)
    {
        var run = CommandRun.Of(written, "kit.yaml");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain($"Did you mean {meant}?").And.NotContain("Unrecognized");
    }

    [Theory]
    [InlineData("--forse", "--force", "sheets", "kit.yaml", "--out", "x")]
    [InlineData("--defualts", "--defaults", "check", "kit.yaml")]
    [InlineData("--jsno", "--json", "plan", "kit.yaml")]
    public void A_mistyped_option_is_answered_with_the_one_that_was_likely_meant(string written, string meant, params string[] line)
    {
        var run = CommandRun.Of([.. line, written]);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain($"Did you mean '{meant}'?");
    }

    [Fact]
    public void An_option_before_its_command_is_told_where_it_goes()
    {
        var run = CommandRun.Of("--json", "plan", "kit.yaml");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("write it behind, e.g. studiokit plan ... --json").And.NotContain("Did you mean");
    }

    [Fact]
    public void Of_a_command_that_does_not_exist_no_option_is_found_fault_with()
    {
        using var json = JsonDocument.Parse(CommandRun.Of("plna", "kit.yaml", "--json").Output);

        json.RootElement.GetProperty("diagnostics").EnumerateArray().Should().ContainSingle().Which.GetProperty("message").GetString().Should().Contain("Did you mean 'plan'?");
    }

    [Fact]
    public void A_program_is_not_told_who_speaks()
    {
        using var json = JsonDocument.Parse(CommandRun.Of("calibrate", "-", "--json").Output);

        json.RootElement.GetProperty("diagnostics")[0].GetProperty("message").GetString().Should().NotStartWith("studiokit:");
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("check")]
    public void A_folder_in_place_of_a_kit_is_said_to_be_one(string command)
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("kits"));

        var run = CommandRun.Of(command, folder.File("kits"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("it is a folder").And.NotContain("denied");
    }

    [Theory]
    [InlineData("0 s")]
    [InlineData("-3 s")]
    public void A_time_limit_that_leaves_no_time_is_refused(string limit)
    {
        var run = CommandRun.Of("cut", "--pieces", "pieces.csv", "--stock", "stock.csv", $"--time-limit={limit}");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--time-limit").And.Contain("0.1 s to 24 h");
    }

    [Theory]
    [InlineData("'letter'", "sheets", "kit.yaml", "--out", "x", "--paper", "leter")]
    [InlineData("'metric'", "sheets", "kit.yaml", "--out", "x", "--units", "metrc")]
    [InlineData("'fish'", "completion", "fsh")]
    public void A_mistyped_word_of_a_fixed_set_is_answered_with_the_one_that_was_likely_meant(string meant, params string[] line)
    {
        var run = CommandRun.Of(line);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain($"Did you mean {meant}?").And.NotContain("StudioKit.").And.NotContain("System.");
    }

    [Fact]
    public void An_argument_that_begins_with_an_at_sign_is_an_argument_of_its_own()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("names"), "--version");

        var run = CommandRun.Of("check", "@" + folder.File("names"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("cannot read @");
    }

    [Theory]
    [InlineData(2, "sheets", "kit.yaml", "--json")]
    [InlineData(2, "plna", "--json")]
    [InlineData(2, "optics", "--focal-length", "55", "--json")]
    [InlineData(3, "plan", "nowhere.yaml", "--json")]
    [InlineData(3, "check", "nowhere.yaml", "--json")]
    [InlineData(3, "light", "nowhere.yaml", "--json")]
    [InlineData(2, "cut", "--kerf", "3", "--json")]
    public void What_is_wrong_comes_as_json_where_json_was_asked_for(int code, params string[] line)
    {
        var run = CommandRun.Of(line);

        run.ExitCode.Should().Be(code);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("exitCode").GetInt32().Should().Be(code);
        var first = json.RootElement.GetProperty("diagnostics")[0];
        first.GetProperty("severity").GetString().Should().Be("error");
        first.GetProperty("message").GetString().Should().NotBeNullOrEmpty();
        first.GetProperty("code").GetString().Should().StartWith("USE");
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("light")]
    public void A_bad_kit_is_told_of_in_json_with_line_and_column(string command)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("bad.yaml"), "kit: Bad\ncamera:\n  name: body\n  sensor: 36 x 24\n");

        var run = CommandRun.Of(command, folder.File("bad.yaml"), "--json");

        run.ExitCode.Should().Be(2);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("diagnostics").EnumerateArray().Should().Contain(entry =>
            entry.GetProperty("code").GetString() == "KIT001" && entry.GetProperty("line").GetInt32() == 4 && entry.GetProperty("column").GetInt32() == 11);
    }
}
