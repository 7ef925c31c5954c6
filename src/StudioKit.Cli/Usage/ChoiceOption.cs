using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Kits.Quantities;

namespace StudioKit.Cli.Usage;

/// <summary>Options that take one word of a fixed set, in any case of its letters.</summary>
internal static class ChoiceOption
{
    /// <summary>An option that may be left out.</summary>
    /// <param name="name">Its name, with its hyphens.</param>
    /// <param name="description">What it is for, with an example.</param>
    /// <param name="fallback">What is taken where it is left out.</param>
    public static Option<T> Create<T>(string name, string description, T fallback)
        where T : struct, Enum => new(name)
        {
            Description = description,
            DefaultValueFactory = _ => fallback,
            CustomParser = result => Read<T>(name, result),
        };

    /// <summary>An option that may be left out and then stands for nothing.</summary>
    /// <param name="name">Its name, with its hyphens.</param>
    /// <param name="description">What it is for, with an example.</param>
    public static Option<T?> Optional<T>(string name, string description)
        where T : struct, Enum => new(name) { Description = description, CustomParser = result => Read<T>(name, result) };

    /// <summary>Why a word does not fit, and which do.</summary>
    public static string Refusal(string name, string written, IReadOnlyList<string> words)
    {
        var meant = NearestName.Of(written, words) is { } nearest ? $" Did you mean '{nearest}'?" : "";
        return $"{name}: '{written}' is not known here.{meant} It takes {ChoiceWords.Listed(words)}.";
    }

    // Top-left and topleft are one word to whoever types it.
    private static string Plain(string word) => word.Replace("-", "", StringComparison.Ordinal);

    private static T Read<T>(string name, ArgumentResult result)
        where T : struct, Enum
    {
        var written = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
        var members = Enum.GetValues<T>();
        var found = Array.FindIndex(members, member => Plain(ChoiceWords.Of(member)).Equals(Plain(written.Trim()), StringComparison.OrdinalIgnoreCase));
        if (found >= 0)
        {
            return members[found];
        }

        result.AddError(Refusal(name, written, [.. members.Select(member => ChoiceWords.Of(member))]));
        return default;
    }
}
