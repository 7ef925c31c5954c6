using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The first page of a field book: whose it is, for which day, whether the plan stands, and what is inside.</summary>
internal sealed record BookCover(Plan Plan, Stamp Stamp, IReadOnlyList<Chapter> Chapters) : Block
{
    private const double Above = 25;
    private const double Gap = 4;

    public override Fit Fit(double width, double height) => new Stack(
        [
            new Spacer(Above),
            new Paragraph(Stamp.KitName, 30, TextWeight.Bold),
            new Paragraph("Field book", 18),
            new Cards.DividingLine(Stroke.Heavy),
            .. Plan.Kit.Description.Length == 0 ? (Block[])[] : [new Paragraph(Plan.Kit.Description, 12)],
            .. Plan.Kit.Site.Name.Length == 0 ? (Block[])[] : [new Paragraph($"Place: {Plan.Kit.Site.Name}", 12)],
            .. Stamp.Date is null ? (Block[])[] : [new Paragraph($"Date: {Stamp.DateText}", 12)],
            new Paragraph($"Content: {Stamp.ContentHash}", 12),
            new Paragraph(PlanReport.Verdict(Plan), 12, TextWeight.Bold),
            new Spacer(Gap),
            new ItemList([.. Chapters.Select(chapter => chapter.Title)], ItemMarker.Dot, 12),
            new Spacer(Gap),
            .. CautionBlocks.Of(Plan, CautionSheet.FieldBook),
            new Caution(UsualCautions.Animals),
        ],
        Gap).Fit(width, height);
}
