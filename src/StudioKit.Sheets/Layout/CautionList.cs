using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Several warnings in one heavy frame, in columns: where paper is short, and all of them are read before anything else.</summary>
/// <param name="Warnings">What each is about, and what it says.</param>
/// <param name="SizePt">Size of type [pt].</param>
internal sealed record CautionList(IReadOnlyList<(string Title, string Text)> Warnings, double SizePt) : Block
{
    private const double Padding = 2.5;

    public override Fit Fit(double width, double height)
    {
        var inner = new InColumns(new Stack([.. Warnings.Select(warning => new KeepTogether(new Stack(
            [new Paragraph($"! {warning.Title}", SizePt, TextWeight.Bold), new Paragraph(warning.Text, SizePt)], 0)))], 1))
            .Fit(width - (2 * Padding), height - (2 * Padding));
        return inner.Problem is not null || inner.Rest is not null
            ? Layout.Fit.Nothing(this, "The cautions do not fit on one page.")
            : new Fit(inner.Height + (2 * Padding),
                [
                    Polygon.Rectangle(new Bounds(0, 0, width, inner.Height + (2 * Padding)), Stroke.Heavy),
                    .. inner.Marks.Under(Similarity.Shift(Padding, Padding)),
                ]);
    }
}
