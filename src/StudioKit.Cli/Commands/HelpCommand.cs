using System.CommandLine;
using StudioKit.Cli.Usage;
using StudioKit.Kits.Quantities;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit help</c>: help of a command or on a topic.</summary>
internal static class HelpCommand
{
    private const string Text =
        """
        Prints the help of a command, or what there is to know about a topic: exit-codes, json, quantities, files, page.

        Example: studiokit help exit-codes
        Example: studiokit help log session
        """;

    /// <summary>Creates the command.</summary>
    /// <param name="host">Where it prints.</param>
    /// <param name="all">Builds every command, for the help of each.</param>
    public static Command Create(CommandHost host, Func<Command> all)
    {
        var about = new Argument<string[]>("command-or-topic")
        {
            Description = "A command such as plan, or log session, or a topic such as exit-codes; the list of all where left out.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var command = new Command("help", Text) { about };
        command.SetAction(parsed => (int)Show(parsed.GetValue(about) ?? [], all(), host));
        return command;
    }

    private static ExitCode Show(string[] words, Command root, CommandHost host)
    {
        if (words is [var topic] && HelpTopics.All.FirstOrDefault(each => each.Name == topic).Text is { } text)
        {
            host.Output.WriteLine(text);
            return ExitCode.Done;
        }

        var command = root;
        foreach (var word in words)
        {
            if (command.Subcommands.FirstOrDefault(each => each.Name == word) is not { } next)
            {
                return Unknown(word, command == root ? [.. root.Subcommands.Select(each => each.Name), .. HelpTopics.All.Select(each => each.Name)] : [.. command.Subcommands.Select(each => each.Name)], host);
            }

            command = next;
        }

        host.Output.Write(CommandHelp.Text(command, string.Join(' ', words.Prepend("studiokit")), host.Width));
        if (command == root)
        {
            host.Output.Write(Topics());
        }

        return ExitCode.Done;
    }

    private static string Topics() => string.Concat(HelpTopics.All
        .Select(topic => $"  {topic.Name,-14}{topic.About}").Prepend("Topics, each shown by 'studiokit help TOPIC':").Prepend("").Select(line => line + Environment.NewLine));

    private static ExitCode Unknown(string word, IReadOnlyList<string> known, CommandHost host)
    {
        var meant = NearestName.Of(word, known) is { } nearest ? $" Did you mean '{nearest}'?" : "";
        host.Report(UsageCodes.BadUsage, $"There is no help on '{word}'.{meant} 'studiokit help' lists what there is.");
        return ExitCode.BadInput;
    }
}
