using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A heading, which also makes an entry in the outline and the table of contents unless it has a size of its own.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Level">Depth, 1 at the top.</param>
internal sealed record Heading(string Text, int Level = 1) : Block
{
    /// <summary>Its size of type where it has one of its own [pt]: it then makes no entry, and nothing stands off from it but what its neighbours leave.</summary>
    public double? OwnSizePt { get; init; }

    private double SizePt => OwnSizePt ?? Level switch { 1 => 18, 2 => 13, _ => 11 };

    private double SpaceAbove => OwnSizePt is not null ? 0 : Level switch { 1 => 0, 2 => 3, _ => 1.5 };

    public override Fit Fit(double width, double height)
    {
        var lines = TextWrap.Lines(Text, width, SizePt, TextWeight.Bold);
        var needed = SpaceAbove + (lines.Count * TypeScale.LineHeight(SizePt));
        var fit = Layout.Fit.WholeOrNothing(
            this, "A heading", needed, height, () => [.. TypeScale.Set(lines, 0, SizePt, TextWeight.Bold, top: SpaceAbove, tag: new Tag(TagKind.Heading) { Level = Level })]);
        return fit.Problem is null && OwnSizePt is null ? fit with { Bookmarks = [new Bookmark(Text, Level, 0)] } : fit;
    }
}
