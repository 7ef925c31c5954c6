using System.CommandLine;
using StudioKit.Kits;

namespace StudioKit.Cli.Usage;

/// <summary>What is taken where an option is left out, as a person would write it.</summary>
internal static class DefaultText
{
    /// <summary>The default itself; none where there is none, or where only words can say it.</summary>
    public static string? Of(Option option) => option is { Required: false, HasDefaultValue: true } ? Of(option.GetDefaultValue()) : null;

    private static string? Of(object? value) => value switch
    {
        null or false or "" => null,
        true => "yes",
        string text => text,
        int number => FormattableString.Invariant($"{number}"),
        Enum member => Enum.IsDefined(member.GetType(), member) ? ChoiceWords.Of(member) : null,
        _ => WrittenQuantity.Of(value),
    };
}
