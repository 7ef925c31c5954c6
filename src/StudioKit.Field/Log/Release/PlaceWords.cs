using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>The words that a session's place goes by.</summary>
internal sealed class PlaceWords
{
    // Shorter ones ("fen", "the") stand in too many names of animals and people to tell a place.
    private const int ShortestWord = 4;
    private readonly HashSet<string> _words;

    public PlaceWords(FieldSession session) => _words = Split(session.Locality).Concat(Split(session.Name)).ToHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The first word of a text that the place goes by, too; none where there is none.</summary>
    public string? In(string text) => Split(text).FirstOrDefault(_words.Contains);

    private static IEnumerable<string> Split(string text)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && IsPartOfWord(text[i]))
            {
                continue;
            }

            if (i - start >= ShortestWord)
            {
                yield return text[start..i];
            }

            start = i + 1;
        }
    }

    private static bool IsPartOfWord(char character) =>
        char.IsLetter(character) || char.GetUnicodeCategory(character) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
}
