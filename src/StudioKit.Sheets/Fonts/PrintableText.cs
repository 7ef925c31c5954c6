using System.Globalization;
using System.Text;

namespace StudioKit.Sheets.Fonts;

/// <summary>What the bundled fonts can print.</summary>
public static class PrintableText
{
    /// <summary>Letters of a text that are printed as a sign for a missing letter.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Each such letter with its accents once, in the order of the text; none where all is printed as it is.</returns>
    public static IReadOnlyList<string> Missing(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Ascii.IsValid(text))
        {
            return [];
        }

        var missing = new List<string>();
        for (var i = 0; i < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, i);
            var element = text.Substring(i, length);
            if (!char.IsControl(element[0]) && !TextMeter.Prints(element) && !missing.Contains(element))
            {
                missing.Add(element);
            }

            i += length;
        }

        return missing;
    }

    /// <summary>A letter with its numbers in Unicode, by which it can be looked up where it is not seen.</summary>
    /// <param name="element">The letter with its accents.</param>
    /// <returns>E.g. <c>ב (U+05D1)</c>.</returns>
    public static string Name(string element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return $"{element} ({string.Join(' ', element.EnumerateRunes().Select(rune => string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}")))})";
    }
}
