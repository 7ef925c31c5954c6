using System.CommandLine;
using FluentAssertions.Execution;
using StudioKit.Cli.Usage;

namespace StudioKit.Cli.Tests;

/// <summary>What every command and option owes the person who reads its help.</summary>
public sealed class HelpTests
{
    private static readonly string[] SaidInWords = ["left out", "else", "efault:", "Must be given"];

    public static TheoryData<string> Commands() => [.. All(Root(), "").Select(each => each.Path).Where(path => path.Length > 0)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_option_that_takes_something_shows_an_example_of_it(string path)
    {
        using var all = new AssertionScope();
        foreach (var option in OptionsOf(At(path)).Where(option => HelpWords.Value(option).Length > 0))
        {
            option.Description.Should().Contain("e.g.", $"{option.Name} of '{path}' takes something");
            HelpWords.Value(option).Should().NotBe("<value>", $"{option.Name} of '{path}' takes something that has a name");
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_option_says_what_is_taken_without_it(string path)
    {
        using var all = new AssertionScope();
        foreach (var option in OptionsOf(At(path)))
        {
            if (HelpWords.Value(option).Length > 0)
            {
                CommandHelp.DescriptionOf(option).Should().ContainAny(SaidInWords, $"{option.Name} of '{path}' may be left out");
            }
            else if (option.HasDefaultValue && option.GetDefaultValue() is true)
            {
                CommandHelp.DescriptionOf(option).Should().Contain("Default: yes", $"{option.Name} of '{path}' is on where it is left out");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_argument_shows_an_example_of_itself(string path)
    {
        foreach (var argument in At(path).Arguments)
        {
            argument.Description.Should().MatchRegex("e\\.g\\.|such as", $"<{argument.Name}> of '{path}' is explained by an example");
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_help_of_a_command_has_an_example_names_no_type_and_no_infinity_and_tells_of_exit_codes(string path)
    {
        var run = CommandRun.Of([.. path.Split(' '), "--help"]);

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("help exit-codes").And.NotContainAny("StudioKit.", "System.", "Infinity", "∞", "NaN", "`1");
        run.Output.Should().NotMatchRegex("Default: (0|nothing|null)\\.");
        if (At(path).Subcommands.Count == 0)
        {
            run.Output.Should().Contain("Example: studiokit ", $"'{path}' shows how it is called");
        }
    }

    [Fact]
    public void Help_tells_of_its_topics_and_of_the_exit_codes()
    {
        CommandRun.Of("help").Output.Should().Contain("exit-codes").And.Contain("quantities");
        CommandRun.Of("help", "exit-codes").Output.Should().ContainAll("0  done", "1  ", "2  bad usage", "3  a file");
        CommandRun.Of("help", "log", "list").Output.Should().Contain("studiokit log list");
    }

    [Fact]
    public void Help_on_something_unknown_names_what_was_likely_meant()
    {
        var run = CommandRun.Of("help", "exit-code");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("'exit-codes'");
    }

    private static RootCommand Root() => StudioKitCommand.BuildAll(new CommandHost { Output = TextWriter.Null, Error = TextWriter.Null });

    private static IEnumerable<(string Path, Command Command)> All(Command command, string path) => command.Subcommands
        .SelectMany(sub => All(sub, $"{path} {sub.Name}".Trim())).Prepend((path, command));

    private static IEnumerable<Option> OptionsOf(Command command) => command.Options.Where(option => !option.Hidden);

    private static Command At(string path) => path.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .Aggregate((Command)Root(), (command, name) => command.Subcommands.First(sub => sub.Name == name));
}
