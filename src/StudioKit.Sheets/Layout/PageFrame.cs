using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>Header and footer of a page.</summary>
internal static class PageFrame
{
    private const double HeaderBaseline = 14;
    private const double RuleBelow = 2;

    public static IEnumerable<Primitive> Marks(SheetDocument document, string number)
    {
        var (left, right) = (document.Setup.Body.Left, document.Setup.Body.Right);
        var shown = TextWrap.Shortened(document.Title, (right - left) / 2, TypeScale.Small, TextWeight.Regular);
        var title = TextMeter.Width(shown, TypeScale.Small, TextWeight.Regular);

        // A name too long for the header ends in an ellipsis there; the first heading has it in full.
        var name = TextWrap.Shortened(document.Stamp.KitName, right - left - title - 6, TypeScale.Small, TextWeight.Bold);
        yield return Text(Tag.Header, left, HeaderBaseline, name, TextAnchor.Start, TextWeight.Bold);
        yield return Text(Tag.Header, right, HeaderBaseline, shown, TextAnchor.End);
        yield return new Line(new Point(left, HeaderBaseline + RuleBelow), new Point(right, HeaderBaseline + RuleBelow), Stroke.Thin);

        var foot = document.Setup.Height - 11;
        yield return new Line(new Point(left, foot - 4.5), new Point(right, foot - 4.5), Stroke.Thin);
        yield return Text(Tag.Footer, left, foot, "C" + document.Stamp.Content[1..], TextAnchor.Start);
        yield return Text(Tag.Footer, (left + right) / 2, foot, document.Stamp.DateText, TextAnchor.Middle);
        yield return Text(Tag.Footer, right, foot, number, TextAnchor.End);
    }

    private static Label Text(Tag tag, double x, double y, string text, TextAnchor anchor, TextWeight weight = TextWeight.Regular) =>
        new(new Point(x, y), text, TypeScale.Small, anchor, Weight: weight) { Tag = tag };
}
