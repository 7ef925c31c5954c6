using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>The few sizes of type that sheets use, and how lines stand under each other.</summary>
internal static class TypeScale
{
    public const double Body = 10;
    public const double Small = 8;

    /// <summary>Wide tables of a report.</summary>
    public const double Tables = 7.5;

    /// <summary>Nothing on any sheet is printed smaller.</summary>
    public const double Smallest = 6.5;

    private const double LineOverSize = 1.28;
    private const double BaselineOverSize = 0.96;

    public static double LineHeight(double sizePt) => LineOverSize * sizePt * TextMeter.MillimetresPerPoint;

    /// <summary>From the top of a line's box down to the line its letters stand on.</summary>
    public static double Baseline(double sizePt) => BaselineOverSize * sizePt * TextMeter.MillimetresPerPoint;

    /// <summary>Lines of text under each other, the first box at the top of the room; a paragraph where nothing else is said.</summary>
    public static IEnumerable<Primitive> Set(
        IReadOnlyList<string> lines, double x, double sizePt, TextWeight weight, TextAnchor anchor = TextAnchor.Start, double top = 0, Tag? tag = null)
    {
        tag ??= new Tag(TagKind.Paragraph);
        return lines.Select((line, i) => new Label(
            new Point(x, top + (i * LineHeight(sizePt)) + Baseline(sizePt)), line, sizePt, anchor, Weight: weight)
        { Tag = tag, GoesOn = i + 1 < lines.Count && WordBreak.EndsWord(line) });
    }
}
