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
}
