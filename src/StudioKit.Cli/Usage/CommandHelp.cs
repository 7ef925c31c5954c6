using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace StudioKit.Cli.Usage;

/// <summary>Help of a command: what it does, how it is called, and every argument and option with what is taken where it is left out.</summary>
internal sealed class CommandHelp(CommandHost host) : SynchronousCommandLineAction
{
    private const int NamesAtMost = 34;

    /// <summary>Help is wanted whatever else stands on the line.</summary>
    public override bool ClearsParseErrors => true;

    /// <summary>Puts our help in the place of the parser's own.</summary>
    public static void ReplaceIn(RootCommand root, CommandHost host)
    {
        foreach (var option in root.Options)
        {
            if (option is HelpOption)
            {
                option.Action = new CommandHelp(host);
                option.Description = "Show this help; 'studiokit help' lists more of it.";
            }
            else if (option is VersionOption)
            {
                option.Description = "Show the version.";
            }
        }
    }

    public override int Invoke(ParseResult parseResult)
    {
        host.Output.Write(Text(parseResult.CommandResult.Command, PathOf(parseResult.CommandResult), host.Width));
        return (int)ExitCode.Done;
    }

    /// <summary>The help of a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="path">How it is called, e.g. <c>studiokit log session</c>.</param>
    /// <param name="width">Characters in a line [1].</param>
    public static string Text(Command command, string path, int width)
    {
        var lines = new List<string>();
        lines.AddRange((command.Description ?? "").ReplaceLineEndings("\n").Split('\n'));
        lines.AddRange(["", "Usage: " + Usage(command, path)]);
        Section(lines, "Arguments", command.Arguments.Where(argument => !argument.Hidden).Select(argument => ($"<{HelpWords.Name(argument)}>", argument.Description ?? "")), width);
        Section(lines, "Options", OptionsOf(command).Select(option => (NameOf(option), DescriptionOf(option))), width);
        Section(lines, "Commands", command.Subcommands.Where(sub => !sub.Hidden).Select(sub => (sub.Name, Opening(sub.Description))), width);
        lines.AddRange(["", "Exit codes: 0 done, 1 a check fails, 2 bad usage or kit, 3 file trouble; see 'studiokit help exit-codes'."]);
        return string.Join(Environment.NewLine, lines) + Environment.NewLine;
    }

    /// <summary>Every option that a command takes, those of the commands above it too.</summary>
    public static IEnumerable<Option> OptionsOf(Command command) => command.Options
        .Concat(command.Parents.OfType<Command>().SelectMany(OptionsOf).Where(option => option.Recursive))
        .Where(option => !option.Hidden).Distinct();

    /// <summary>What an option is for, and what is taken where it is left out.</summary>
    public static string DescriptionOf(Option option) => (option.Required, DefaultText.Of(option)) switch
    {
        (true, _) => $"{option.Description} Must be given.",
        (_, { } standing) => $"{option.Description} Default: {standing}.",
        _ => option.Description ?? "",
    };

    private static string NameOf(Option option)
    {
        var names = string.Join(", ", option.Aliases.Where(alias => alias.StartsWith('-')).Prepend(option.Name));
        return $"{names} {HelpWords.Value(option)}".TrimEnd();
    }

    private static string Usage(Command command, string path) => string.Join(' ', new[] { path }
        .Concat(command.Subcommands.Count > 0 ? ["<command>"] : [])
        .Concat(command.Arguments.Where(argument => !argument.Hidden).Select(Placed))
        .Concat(OptionsOf(command).Where(option => option.Required).Select(NameOf))
        .Append("[options]"));

    private static string Placed(Argument argument)
    {
        var name = $"<{HelpWords.Name(argument)}>{(argument.Arity.MaximumNumberOfValues > 1 ? "..." : "")}";
        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{name}]" : name;
    }

    // The list of all commands has a line for each; its own help says the rest.
    private static string Opening(string? description) => HelpWords.FirstSentence((description ?? "").ReplaceLineEndings("\n").Split("\n\n")[0]);

    private static void Section(List<string> lines, string title, IEnumerable<(string Name, string Text)> entries, int width)
    {
        var rows = entries.ToList();
        if (rows.Count == 0)
        {
            return;
        }

        var indent = Math.Min(NamesAtMost, rows.Max(row => row.Name.Length)) + 4;
        lines.AddRange(["", title + ":"]);
        foreach (var (name, text) in rows)
        {
            var wrapped = Wrapped(text, Math.Max(30, width - indent));
            var fits = name.Length + 4 <= indent;
            lines.Add(fits ? $"  {name.PadRight(indent - 2)}{wrapped[0]}".TrimEnd() : $"  {name}");
            lines.AddRange(wrapped.Skip(fits ? 1 : 0).Select(line => new string(' ', indent) + line));
        }
    }

    private static List<string> Wrapped(string text, int width)
    {
        var lines = new List<string> { "" };
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > width)
            {
                lines.Add("");
            }

            lines[^1] += lines[^1].Length == 0 ? word : " " + word;
        }

        return lines;
    }

    private static string PathOf(CommandResult result) => result.Parent is CommandResult parent ? $"{PathOf(parent)} {result.Command.Name}" : "studiokit";
}
