using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>The top line of a card: the set-up, and the card's place in its ring at the right, where one leafs for it.</summary>
internal sealed record CardHead(string SetUp, string Place, double SizePt) : Block
{
    private const double Gap = 3;

    public override Fit Fit(double width, double height)
    {
        var lines = TextWrap.Lines(SetUp, width - TextMeter.Width(Place, TypeScale.Small, TextWeight.Bold) - Gap, SizePt, TextWeight.Bold);
        return Layout.Fit.WholeOrNothing(this, "The set-up's name", lines.Count * TypeScale.LineHeight(SizePt), height, () =>
        [
            .. TypeScale.Set(lines, 0, SizePt, TextWeight.Bold, tag: new Tag(TagKind.Heading) { Level = 1 }),
            new Label(new Point(width, TypeScale.Baseline(SizePt)), Place, TypeScale.Small, TextAnchor.End, Weight: TextWeight.Bold),
        ]);
    }
}
