using StudioKit.Kits.Triggers;

namespace StudioKit.Kits.Quantities;

/// <summary>Values that are words: names, choices, yes and no.</summary>
internal static class WordText
{
    public static Reading<string> Line(string text, int longest)
    {
        var line = text.Trim();
        if (line.Length == 0)
        {
            return Reading<string>.Bad("There is no text here.", "Write a few words, or leave the key out.");
        }

        if (line.AsSpan().IndexOfAnyInRange('\0', '\u001F') >= 0)
        {
            return Reading<string>.Bad("The text has a line break or a control character.", "Write it on one line, in plain letters.");
        }

        return line.Length <= longest
            ? Reading<string>.Good(line)
            : Reading<string>.Bad($"The text has {line.Length} characters.", $"At most {longest} fit on the sheets.");
    }

    public static Reading<bool> YesNo(string text) => text.Trim().ToUpperInvariant() switch
    {
        "YES" or "TRUE" => Reading<bool>.Good(true),
        "NO" or "FALSE" => Reading<bool>.Good(false),
        _ => Reading<bool>.Bad($"'{text}' is neither yes nor no.", "Write 'yes' or 'no'."),
    };

    public static Reading<int> Choice(string text, string noun, string[] words)
    {
        var index = Array.IndexOf(words, text.Trim());
        if (index >= 0)
        {
            return Reading<int>.Good(index);
        }

        var nearest = NearestName.Of(text, words) ?? OnlyOneWith(text.Trim(), words);
        var all = string.Join(", ", words);
        return Reading<int>.Bad($"'{text}' is not {noun}.", nearest is null ? $"Choose one of: {all}." : $"Did you mean '{nearest}'? Known: {all}.");
    }

    // A word of the name alone, as 'white' for 'white-background', where no other has it.
    private static string? OnlyOneWith(string piece, string[] words)
    {
        var found = piece.Length < 3 ? [] : Array.FindAll(words, word => word.Contains(piece, StringComparison.OrdinalIgnoreCase));
        return found.Length == 1 ? found[0] : null;
    }

    public static Reading<double> Price(string text) => NumberText.Bare(text, "a price", "4.20").Then(value =>
        Math.Abs(value) < 1e9
            ? Reading<double>.Good(value)
            : Reading<double>.Bad($"'{text}' is too large a price.", "Write a price in the stock's currency, for example '4.20'."));

    public static Reading<string> RadioGroup(string text) =>
        TriggerGroup.Place(text.Trim()) is not null
            ? Reading<string>.Good(text.Trim())
            : Reading<string>.Bad($"'{text}' is not a group of a radio.", "Write one capital letter, 'A' to 'P'.");

    public static Reading<string> Currency(string text) =>
        text.Trim() is { Length: 3 } code && code.All(char.IsAsciiLetterUpper)
            ? Reading<string>.Good(code)
            : Reading<string>.Bad($"'{text}' is not a currency code.", "Write the three capital letters of ISO 4217, for example 'EUR'.");
}
