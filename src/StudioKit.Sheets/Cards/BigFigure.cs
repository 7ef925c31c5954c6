using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>A setting in numerals to be read at arm's length, with a small word over it and its unit behind it.</summary>
/// <param name="Word">What it is.</param>
/// <param name="Figure">The numerals.</param>
/// <param name="Unit">The unit; empty where the numerals carry it.</param>
internal sealed record BigFigure(string Word, string Figure, string Unit = "")
{
    private const double UnitShare = 0.5;

    /// <summary>Width at some size of the numerals.</summary>
    public double Width(double sizePt) =>
        TextMeter.Width(Figure, sizePt, TextWeight.Figures) + UnitWidth(sizePt);

    /// <summary>Height of the word and the numerals together.</summary>
    public static double Height(double sizePt, double wordPt) =>
        TextMeter.CapHeight(wordPt, TextWeight.Regular) + 1.6 + TextMeter.CapHeight(sizePt, TextWeight.Figures);

    /// <summary>The word over the numerals, from the upper left corner given.</summary>
    public IEnumerable<Primitive> Marks(double x, double y, double sizePt, double wordPt)
    {
        var baseline = y + Height(sizePt, wordPt);
        var tag = new Tag(TagKind.Paragraph);
        yield return new Label(new Point(x, y), Word, wordPt, Rise: TextRise.Top) { Tag = tag, GoesOn = true };
        yield return new Label(new Point(x, baseline), Figure, sizePt, Weight: TextWeight.Figures) { Tag = tag, GoesOn = Unit.Length > 0 };
        if (Unit.Length > 0)
        {
            var behind = TextMeter.Width(Figure, sizePt, TextWeight.Figures) + Space(sizePt);
            yield return new Label(new Point(x + behind, baseline), Unit, UnitShare * sizePt, Weight: TextWeight.Bold) { Tag = tag };
        }
    }

    private static double Space(double sizePt) => 0.12 * sizePt * TextMeter.MillimetresPerPoint;

    private double UnitWidth(double sizePt) =>
        Unit.Length == 0 ? 0 : Space(sizePt) + TextMeter.Width(Unit, UnitShare * sizePt, TextWeight.Bold);
}
