using System.CommandLine;
using System.CommandLine.Completions;
using StudioKit.Kits;

namespace StudioKit.Cli.Usage;

/// <summary>The words that an option or argument of a fixed set takes.</summary>
internal static class ChoiceWords
{
    /// <summary>Every word; empty where anything may stand.</summary>
    public static IReadOnlyList<string> Of(Symbol symbol) => symbol switch
    {
        Option { ValueType: var type } when EnumOf(type) is { } members => OfMembers(members),
        Argument { ValueType: var type } when EnumOf(type) is { } members => OfMembers(members),
        Option option when option.ValueType != typeof(bool) => Labels(option.GetCompletions(CompletionContext.Empty)),
        Argument argument => Labels(argument.GetCompletions(CompletionContext.Empty)),
        _ => [],
    };

    /// <summary>A member of a fixed set, e.g. <c>metric</c>; a name with a figure in it, as <c>A4</c>, is spelt as it is.</summary>
    public static string Of(Enum member) => Of(member.ToString());

    /// <summary>Words as a sentence lists them: "metric or both".</summary>
    public static string Listed(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} or {words[^1]}";

    private static string Of(string member) => member.Any(char.IsAsciiDigit) ? member : MemberText.Hyphenated(member);

    private static Type? EnumOf(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is { IsEnum: true } members ? members : null;

    private static IReadOnlyList<string> OfMembers(Type members) => [.. Enum.GetNames(members).Select(Of)];

    private static IReadOnlyList<string> Labels(IEnumerable<CompletionItem> items) => [.. items.Select(item => item.Label)];
}
