using System.Globalization;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>One line of the table of contents.</summary>
internal sealed record ContentsEntry(string Title, int Level, int Page, Tag Contents) : Block
{
    private const double SizePt = 9;
    private const double IndentPerLevel = 4;
    private const double NumberWidth = 9;

    public override Fit Fit(double width, double height)
    {
        var indent = IndentPerLevel * (Level - 1);
        var weight = Level == 1 ? TextWeight.Bold : TextWeight.Regular;
        var lines = TextWrap.Lines(Title, width - indent - NumberWidth, SizePt, weight);
        var link = new Tag(TagKind.Link, new Tag(TagKind.ContentsItem, Contents));
        var number = Page.ToString(CultureInfo.InvariantCulture);
        return Layout.Fit.WholeOrNothing(this, "An entry of the contents", lines.Count * TypeScale.LineHeight(SizePt), height, () =>
        [
            .. TypeScale.Set(lines, indent, SizePt, weight, tag: link),
            .. TypeScale.Set([number], width, SizePt, weight, TextAnchor.End, tag: link),
        ]);
    }
}
