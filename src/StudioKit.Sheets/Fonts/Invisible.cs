using System.Globalization;

namespace StudioKit.Sheets.Fonts;

/// <summary>Characters that steer how others are shown and have no shape of their own: joiners, marks of direction, choices of variant.</summary>
internal static class Invisible
{
    /// <summary>What of a letter is seen.</summary>
    public static string Without(string element) => element.Any(Is) ? string.Concat(element.Where(letter => !Is(letter))) : element;

    private static bool Is(char letter) => letter is >= '\uFE00' and <= '\uFE0F' || (letter != '\u00AD' && CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.Format);
}
