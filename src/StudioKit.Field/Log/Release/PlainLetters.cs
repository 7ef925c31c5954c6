using System.Globalization;
using System.Text;

namespace StudioKit.Field.Log.Release;

/// <summary>Words as they compare whatever their capitals and accents, typed in one sign or in two.</summary>
/// <remarks>The program runs without tables of cultures, so that the accented letters of Latin script are listed here (Unicode blocks Latin-1 Supplement and Latin Extended-A).</remarks>
internal static class PlainLetters
{
    private static readonly string[] Groups =
    [
        "AÀÁÂÃÄÅĀĂĄ", "CÇĆĈĊČ", "DĎĐ", "EÈÉÊËĒĔĖĘĚ", "GĜĞĠĢ", "HĤĦ", "IÌÍÎÏĨĪĬĮİ", "JĴ", "KĶ", "LĹĻĽĿŁ", "NÑŃŅŇ", "OÒÓÔÕÖØŌŎŐ", "RŔŖŘ", "SŚŜŞŠ",
        "TŢŤŦ", "UÙÚÛÜŨŪŬŮŰŲ", "WŴ", "YÝŶŸ", "ZŹŻŽ",
    ];

    private static readonly Dictionary<char, char> Plain = Groups.SelectMany(group => group.Skip(1).Select(sign => (sign, group[0]))).ToDictionary();

    /// <summary>A word in capitals without accents.</summary>
    public static string Of(string word) => Ascii.IsValid(word) ? word.ToUpperInvariant() :
        string.Concat(word.ToUpperInvariant().Where(sign => !IsMark(sign)).Select(sign => Plain.GetValueOrDefault(sign, sign)));

    /// <summary>Whether a sign is an accent by itself.</summary>
    public static bool IsMark(char sign) => char.GetUnicodeCategory(sign) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;
}
