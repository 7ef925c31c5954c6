using System.Globalization;
using System.Text;

namespace StudioKit.Sheets.Fonts;

/// <summary>The one place that knows how wide text comes out, and which font prints which letter.</summary>
internal static class TextMeter
{
    public const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>What is printed for a letter that no bundled font has or can set.</summary>
    public const string Replacement = "\uFFFD";

    // Latin, Greek and Cyrillic: nearly all text, measured again and again while lines are broken.
    private const int Remembered = 0x530;

    // PDFsharp makes letters bold by a thicker outline, and sets them this share of their size further apart.
    private const double Emphasis = 0.02;

    private static readonly FontFace[] RegularFaces = [FontFace.Regular, FontFace.FallbackRegular, FontFace.Wide];
    private static readonly FontFace[] BoldFaces = [FontFace.Bold, FontFace.FallbackBold, FontFace.WideBold];
    private static readonly FontFace[] FigureFaces = [FontFace.FallbackBold, FontFace.Bold, FontFace.WideBold];

    private static readonly double[][] Advances = [.. Enum.GetValues<TextWeight>().Select(_ => Unknown())];

    /// <summary>Splits text where the first family lacks a letter; an accent stays with the letter that carries it.</summary>
    public static IReadOnlyList<TextRun> Runs(string text, TextWeight weight)
    {
        if (Ascii.IsValid(text))
        {
            return text.Length == 0 ? [] : [new TextRun(Faces(weight)[0], text)];
        }

        var runs = new List<TextRun>();
        for (var i = 0; i < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, i);
            if (RunOf(text.Substring(i, length), weight) is { Text.Length: > 0 } run)
            {
                Append(runs, run);
            }

            i += length;
        }

        return runs;
    }

    /// <summary>Width of one line of text, in millimetres.</summary>
    public static double Width(string text, double sizePt, TextWeight weight)
    {
        var ems = 0.0;
        for (var i = 0; i < text.Length;)
        {
            // A letter with nothing over or under it needs no look at what belongs together.
            if (IsPlain(text[i]) && (i + 1 == text.Length || IsPlain(text[i + 1])))
            {
                ems += Advance(text[i], weight);
                i++;
                continue;
            }

            var length = StringInfo.GetNextTextElementLength(text, i);
            ems += Ems(RunOf(text.Substring(i, length), weight));
            i += length;
        }

        return ems * sizePt * MillimetresPerPoint;
    }

    public static double Width(TextRun run, double sizePt) => Ems(run) * sizePt * MillimetresPerPoint;

    /// <summary>Height of a capital letter, in millimetres.</summary>
    public static double CapHeight(double sizePt, TextWeight weight) =>
        BundledFonts.Metrics(Faces(weight)[0]).CapHeight * sizePt * MillimetresPerPoint;

    /// <summary>Whether a letter with its accents is printed as it is.</summary>
    public static bool Prints(string element) => RunOf(element, TextWeight.Regular).Text != Replacement || element == Replacement;

    private static FontFace[] Faces(TextWeight weight) => weight switch
    {
        TextWeight.Bold => BoldFaces,
        TextWeight.Figures => FigureFaces,
        _ => RegularFaces,
    };

    private static TextRun RunOf(string element, TextWeight weight)
    {
        var faces = Faces(weight);
        var shown = Invisible.Without(element);
        if (!Shaping.Needs(shown))
        {
            foreach (var face in faces)
            {
                if (Prints(face, shown))
                {
                    return new TextRun(face, shown);
                }
            }
        }

        return new TextRun(faces.First(face => Prints(face, Replacement)), Replacement);
    }

    private static bool IsPlain(char letter) => letter is < '\u0300' or (>= '\u0370' and < '\u0483') or (>= '\u048A' and < '\u0530');

    private static double Advance(char letter, TextWeight weight)
    {
        ref var advance = ref Advances[(int)weight][letter];
        return double.IsNaN(advance) ? advance = Ems(RunOf(letter.ToString(), weight)) : advance;
    }

    private static double Ems(TextRun run)
    {
        var font = BundledFonts.Metrics(run.Face);
        var (ems, emphasis) = (0.0, run.Face == FontFace.WideBold ? Emphasis : 0);
        foreach (var rune in run.Text.EnumerateRunes())
        {
            ems += font.Advance(rune) + emphasis;
        }

        return ems;
    }

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

    private static double[] Unknown()
    {
        var advances = new double[Remembered];
        Array.Fill(advances, double.NaN);
        return advances;
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
