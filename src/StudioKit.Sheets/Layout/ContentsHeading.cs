using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>The heading over the table of contents, which makes no entry in it.</summary>
internal sealed record ContentsHeading : Block
{
    private const double SizePt = 18;

    public override Fit Fit(double width, double height) => Layout.Fit.WholeOrNothing(
        this, "The contents' heading", TypeScale.LineHeight(SizePt) + 2, height, () => [.. TypeScale.Set(["Contents"], 0, SizePt, TextWeight.Bold, tag: new Tag(TagKind.Heading) { Level = 1 })]);
}
