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
}
