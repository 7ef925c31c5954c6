using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A heading, which also makes an entry in the outline and the table of contents.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Level">Depth, 1 at the top.</param>
internal sealed record Heading(string Text, int Level = 1) : Block
{
    private double SizePt => Level switch { 1 => 18, 2 => 13, _ => 11 };

    private double SpaceAbove => Level switch { 1 => 0, 2 => 3, _ => 1.5 };

    public override Fit Fit(double width, double height)
    {
        var lines = TextWrap.Lines(Text, width, SizePt, TextWeight.Bold);
        var needed = SpaceAbove + (lines.Count * TypeScale.LineHeight(SizePt));
        var fit = Layout.Fit.WholeOrNothing(
            this, "A heading", needed, height, () => [.. TypeScale.Set(lines, 0, SizePt, TextWeight.Bold, top: SpaceAbove, tag: new Tag(TagKind.Heading) { Level = Level })]);
        return fit.Problem is null ? fit with { Bookmarks = [new Bookmark(Text, Level, 0)] } : fit;
    }
}
