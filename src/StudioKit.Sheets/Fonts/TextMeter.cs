using System.Globalization;
using System.Text;

namespace StudioKit.Sheets.Fonts;

/// <summary>The one place that knows how wide text comes out, and which font prints which letter.</summary>
internal static class TextMeter
{
    public const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>Splits text where the first family lacks a letter; an accent stays with the letter that carries it.</summary>
    public static IReadOnlyList<TextRun> Runs(string text, TextWeight weight)
    {
        var (first, fallback) = Faces(weight);
        if (Ascii.IsValid(text))
        {
            return text.Length == 0 ? [] : [new TextRun(first, text)];
        }

        var runs = new List<TextRun>();
        for (var i = 0; i < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, i);
            var element = text.Substring(i, length);
            var face = Prints(first, element) ? first : fallback;
            Append(runs, new TextRun(face, element));
            i += length;
        }

        return runs;
    }

    /// <summary>Width of one line of text, in millimetres.</summary>
    public static double Width(string text, double sizePt, TextWeight weight) =>
        Runs(text, weight).Sum(run => Width(run, sizePt));

    public static double Width(TextRun run, double sizePt)
    {
        var font = BundledFonts.Metrics(run.Face);
        var ems = 0.0;
        foreach (var rune in run.Text.EnumerateRunes())
        {
            ems += font.Advance(rune);
        }

        return ems * sizePt * MillimetresPerPoint;
    }

    /// <summary>Height of a capital letter, in millimetres.</summary>
    public static double CapHeight(double sizePt, TextWeight weight) =>
        BundledFonts.Metrics(Faces(weight).First).CapHeight * sizePt * MillimetresPerPoint;

    private static (FontFace First, FontFace Fallback) Faces(TextWeight weight) =>
        weight switch
        {
            TextWeight.Bold => (FontFace.Bold, FontFace.FallbackBold),
            TextWeight.Figures => (FontFace.FallbackBold, FontFace.Bold),
            _ => (FontFace.Regular, FontFace.FallbackRegular),
        };

    private static bool Prints(FontFace face, string element)
    {
        var font = BundledFonts.Metrics(face);
        foreach (var rune in element.EnumerateRunes())
        {
            if (!font.Has(rune))
            {
                return false;
            }
        }

        return true;
    }

    private static void Append(List<TextRun> runs, TextRun next)
    {
        if (runs.Count > 0 && runs[^1].Face == next.Face)
        {
            runs[^1] = new TextRun(next.Face, runs[^1].Text + next.Text);
        }
        else
        {
            runs.Add(next);
        }
    }
}
