using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Kits.Quantities;

namespace StudioKit.Cli.Usage;

/// <summary>What is wrong with a command line, in our own words: with the name that was likely meant, and with what an option takes.</summary>
internal static class UsageText
{
    // The parser's own messages name types of the program; these beginnings tell which of them it is.
    private const string Unmatched = "Unrecognized command or argument";
    private const string NoCommand = "Required command was not provided";
    private const string NotOfType = "Cannot parse argument";
    private const string NotAmong = "Argument '";
    private const string NoArgument = "Required argument ";
    private const string NoOption = "Option '";

    /// <summary>Every fault, a sentence each; none where the line can be carried out.</summary>
    public static IReadOnlyList<string> Faults(ParseResult parsed)
    {
        // Help, the version and completion ask nothing of the rest of the line, and the parser then has no errors.
        var unmatched = parsed.Errors.Count == 0 ? [] : parsed.UnmatchedTokens;
        var strays = unmatched.Concat(OptionsTakenForArguments(parsed)).Distinct(StringComparer.Ordinal).ToList();
        if (parsed.CommandResult.Command.Subcommands.Count > 0 && strays.Find(stray => !IsOptionLike(stray)) is { } command)
        {
            // Of a command that does not exist nobody knows the options.
            strays = [command];
        }

        var rest = parsed.Errors.Where(error => !error.Message.StartsWith(Unmatched, StringComparison.Ordinal)
            && !(strays.Count > 0 && error.Message.StartsWith(NoCommand, StringComparison.Ordinal)));
        return [.. strays.Select(stray => Stray(stray, parsed.CommandResult)), .. rest.Select(error => Sentence(error, parsed.CommandResult.Command))];
    }

    // A list of files would swallow an option that does not exist as one more file; behind '--' anything may stand.
    private static IEnumerable<string> OptionsTakenForArguments(ParseResult parsed) => parsed.Tokens.Any(token => token.Type == TokenType.DoubleDash)
        ? []
        : parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(argument => argument.Tokens).Select(token => token.Value).Where(IsOptionLike);

    private static bool IsOptionLike(string token) => token.Length > 1 && token[0] == '-' && char.IsAsciiLetter(token.TrimStart('-').FirstOrDefault()) && !token.Contains(' ', StringComparison.Ordinal);

    private static string Stray(string token, CommandResult at)
    {
        var isOption = IsOptionLike(token);
        IReadOnlyList<string> known = isOption ? [.. OptionNames(at)] : [.. at.Command.Subcommands.Select(command => command.Name)];
        var name = token.Split('=')[0];
        if (isOption && known.Contains(name, StringComparer.Ordinal))
        {
            return $"'{name}' stands before its command; write it behind, e.g. studiokit {at.Command.Name} ... {name}.";
        }

        var meant = NearestName.Of(name, known) is { } nearest ? $" Did you mean '{nearest}'?" : "";
        return isOption ? $"There is no option '{token}' here.{meant}"
            : known.Count > 0 ? $"There is no command '{token}'.{meant}"
            : $"'{token}' is one thing too many here.";
    }

    private static IEnumerable<string> OptionNames(CommandResult at)
    {
        for (SymbolResult? result = at; result is CommandResult command; result = result.Parent)
        {
            foreach (var option in command.Command.Options.Where(option => !option.Hidden && (command == at || option.Recursive)))
            {
                yield return option.Name;
            }
        }
    }

    private static string Sentence(ParseError error, Command command) => error.SymbolResult switch
    {
        OptionResult { Option: var option } result when IsAboutValue(error.Message) => WrongValue(option.Name, option, option.ValueType, Written(result.Tokens)),
        ArgumentResult { Argument: var argument } result when IsAboutValue(error.Message) =>
            WrongValue(OptionHolding(result)?.Name ?? $"<{argument.Name}>", OptionHolding(result) as Symbol ?? argument, argument.ValueType, Written(result.Tokens)),
        _ when error.Message.StartsWith(NoCommand, StringComparison.Ordinal) => $"Say what to do: {ChoiceWords.Listed([.. command.Subcommands.Select(each => each.Name)])}.",
        _ when error.Message.StartsWith(NoArgument, StringComparison.Ordinal) => Missing(error, command),
        _ when error.Message.StartsWith(NoOption, StringComparison.Ordinal) => MissingOption(error, command),
        _ => error.Message,
    };

    private static bool IsAboutValue(string message) =>
        message.StartsWith(NotOfType, StringComparison.Ordinal) || message.StartsWith(NotAmong, StringComparison.Ordinal);

    private static Option? OptionHolding(ArgumentResult result) => (result.Parent as OptionResult)?.Option;

    private static string Written(IReadOnlyList<Token> tokens) => string.Join(' ', tokens.Select(token => token.Value));

    private static string WrongValue(string name, Symbol symbol, Type type, string written)
    {
        var words = ChoiceWords.Of(symbol);
        var plain = Nullable.GetUnderlyingType(type) ?? type;
        return words.Count > 0 ? ChoiceOption.Refusal(name, written, words)
            : plain == typeof(bool) ? $"{name}: '{written}' is neither true nor false; the option takes no value of its own."
            : plain == typeof(int) || plain == typeof(long) ? $"{name}: '{written}' is not a whole number; write for example 4."
            : plain == typeof(double) || plain == typeof(decimal) ? $"{name}: '{written}' is not a number; write for example 0.5."
            : $"{name}: '{written}' cannot be read here.";
    }

    private static string Missing(ParseError error, Command command) => error.SymbolResult switch
    {
        OptionResult { Option: var option } => $"{option.Name} needs {HelpWords.Value(option)}: {HelpWords.FirstSentence(option.Description)}",
        ArgumentResult { Argument: var argument } => $"{command.Name} needs <{HelpWords.Name(argument)}>: {HelpWords.FirstSentence(argument.Description)}",
        _ => $"{command.Name} needs {string.Join(' ', command.Arguments.Where(each => each.Arity.MinimumNumberOfValues > 0).Select(each => $"<{HelpWords.Name(each)}>"))}.",
    };

    private static string MissingOption(ParseError error, Command command)
    {
        var named = command.Options.FirstOrDefault(option => error.Message.Contains($"'{option.Name}'", StringComparison.Ordinal));
        return named is null || !error.Message.Contains("is required", StringComparison.Ordinal)
            ? error.Message
            : $"{named.Name} {HelpWords.Value(named)} must be given: {HelpWords.FirstSentence(named.Description)}";
    }
}
