using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A warning where someone or an animal can be hurt: a heavy frame and a sign, seen before it is read.</summary>
internal sealed record Caution(string Text, string Title = "Caution", double SizePt = TypeScale.Body) : Block
{
    private const double Padding = 3;
    private const double SignWidth = 9;

    public override Fit Fit(double width, double height)
    {
        var x = Padding + SignWidth + Padding;
        var lines = TextWrap.Lines(Text, width - x - Padding, SizePt, TextWeight.Regular);
        var lineHeight = TypeScale.LineHeight(SizePt);
        var titles = TextWrap.Lines(Title, width - x - Padding, SizePt, TextWeight.Bold);
        var needed = (2 * Padding) + Math.Max((lines.Count + titles.Count) * lineHeight, SignWidth);
        return Layout.Fit.WholeOrNothing(this, "A caution", needed, height, () =>
        [
            Polygon.Rectangle(new Bounds(0, 0, width, needed), Stroke.Heavy),
            .. Sign(),
            .. TypeScale.Set(titles, x, SizePt, TextWeight.Bold, top: Padding),
            .. TypeScale.Set(lines, x, SizePt, TextWeight.Regular, top: Padding + (titles.Count * lineHeight)),
        ]);
    }

    private static IEnumerable<Primitive> Sign()
    {
        yield return new Polygon(
            [
                new Point(Padding + (SignWidth / 2), Padding),
                new Point(Padding + SignWidth, Padding + (0.88 * SignWidth)),
                new Point(Padding, Padding + (0.88 * SignWidth)),
            ],
            Stroke.Heavy);
        yield return new Label(
            new Point(Padding + (SignWidth / 2), Padding + (0.76 * SignWidth)), "!", 15, TextAnchor.Middle, Weight: TextWeight.Bold)
        { Tag = Tag.Ornament };
    }
}
