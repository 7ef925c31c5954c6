using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>A sentence in a frame, led by a bold word.</summary>
internal sealed record BoxedText(string Lead, string Text, double SizePt) : Block
{
    private const double Padding = 1.6;

    public override Fit Fit(double width, double height)
    {
        var lead = Fonts.TextMeter.Width(Lead, SizePt, TextWeight.Bold) + Padding;
        var lines = TextWrap.Lines(Text, width - lead - (2 * Padding), SizePt, TextWeight.Regular);
        var needed = (lines.Count * TypeScale.LineHeight(SizePt)) + (2 * Padding);
        return Layout.Fit.WholeOrNothing(this, Lead, needed, height, () =>
        [
            Polygon.Rectangle(new Bounds(0, 0, width, needed), Stroke.Edge),
            .. TypeScale.Set([Lead], Padding, SizePt, TextWeight.Bold, top: Padding),
            .. TypeScale.Set(lines, Padding + lead, SizePt, TextWeight.Regular, top: Padding),
        ]);
    }
}
