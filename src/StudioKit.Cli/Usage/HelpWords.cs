using System.CommandLine;

namespace StudioKit.Cli.Usage;

/// <summary>Names that help and messages give to what goes into options and arguments.</summary>
internal static class HelpWords
{
    private const int LongestChoice = 24;

    /// <summary>What goes into an option, in angle brackets; empty where it takes nothing.</summary>
    public static string Value(Option option)
    {
        if (option.Arity.MaximumNumberOfValues == 0 || option.ValueType == typeof(bool))
        {
            return "";
        }

        var words = string.Join('|', ChoiceWords.Of(option));
        var name = option.HelpName ?? (words.Length is > 0 and <= LongestChoice ? words : option.Name.TrimStart('-'));
        return $"<{name}>";
    }

    /// <summary>What goes into an argument.</summary>
    public static string Name(Argument argument) => argument.HelpName ?? argument.Name;

    /// <summary>A description up to the first full stop that ends a sentence; that of "e.g." does not.</summary>
    public static string FirstSentence(string? description)
    {
        var text = (description ?? "").ReplaceLineEndings(" ");
        for (var end = text.IndexOf(". ", StringComparison.Ordinal); end >= 0; end = text.IndexOf(". ", end + 1, StringComparison.Ordinal))
        {
            if (!text.AsSpan(0, end).EndsWith("e.g", StringComparison.Ordinal))
            {
                return text[..(end + 1)];
            }
        }

        return text;
    }
}
