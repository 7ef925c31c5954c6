using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>The words that a session's place goes by, and the figures.</summary>
/// <remarks>
/// Capitals and accents are looked through. A long word is found in compounds, too, and so is one of a script that sets no spaces; shorter words
/// ("fen", "the") stand in too many names of animals and people to tell a place, so they count only side by side as in the place's name, or alone
/// where they are all of it.
/// </remarks>
internal sealed class PlaceWords
{
    private const int ShortestWord = 4;
    private const int ShortestOfCompound = 5;
    private const int ShortestWithoutSpaces = 2;
    private readonly List<string> _words;
    private readonly List<string> _names;

    private readonly PlaceFigures _figures;

    public PlaceWords(FieldSession session)
    {
        _figures = new PlaceFigures(session);
        string[] texts = [session.Locality, session.Name];
        _words = [.. texts.SelectMany(Split).Select(PlainLetters.Of).Where(word => word.Length >= ShortestWord || IsWithoutSpaces(word)).Distinct(StringComparer.Ordinal)];
        _names =
        [
            .. texts.SelectMany(text => text.Split(',', ';', '\n')).Select(part => Split(part).ToList()).Where(words => words.Count > 1)
                .Concat(texts.Select(text => Split(text).ToList()).Where(words => words is [{ Length: > 1 }])).Select(Joined),
        ];
    }

    /// <summary>The first word or figure of a text that the place goes by, too; none where there is none.</summary>
    public string? In(string text)
    {
        var words = Split(text).ToList();
        var joined = Joined(words);
        return words.Find(IsTelling) ?? _names.Find(name => joined.Contains(name, StringComparison.Ordinal))?.Trim() ?? _figures.In(text);
    }

    private bool IsTelling(string word) => PlainLetters.Of(word) is var plain && _words.Exists(own =>
        own == plain || ((own.Length >= ShortestOfCompound || IsWithoutSpaces(own)) && plain.Contains(own, StringComparison.Ordinal)));

    private static string Joined(IEnumerable<string> words) => $" {string.Join(' ', words.Select(PlainLetters.Of))} ";

    private static bool IsWithoutSpaces(string word) =>
        word.Length >= ShortestWithoutSpaces && word.All(sign => char.GetUnicodeCategory(sign) == UnicodeCategory.OtherLetter);

    private static IEnumerable<string> Split(string text)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && (char.IsLetter(text[i]) || PlainLetters.IsMark(text[i])))
            {
                continue;
            }

            if (i > start)
            {
                yield return text[start..i];
            }

            start = i + 1;
        }
    }
}
