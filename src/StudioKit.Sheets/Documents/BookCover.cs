using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What a field book says before its contents: whose it is, for which day, whether the plan stands, and what to be careful of.</summary>
internal static class BookCover
{
    private const double TitlePt = 26;
    private const double CautionPt = 9;

    public static IEnumerable<Block> Of(Plan plan, Stamp stamp) =>
    [
        new Heading(stamp.KitName) { OwnSizePt = TitlePt },
        new Paragraph(string.Join("; ", Facts(plan, stamp))),
        new Cards.DividingLine(Stroke.Heavy),
        .. plan.Kit.Description.Length == 0 ? (Block[])[] : [new Paragraph(plan.Kit.Description)],
        new Paragraph(PlanReport.Verdict(plan), 12, TextWeight.Bold),
        new CautionList([.. CautionBlocks.Listed(plan, CautionSheet.FieldBook), ("Animals", UsualCautions.Animals)], CautionPt),
    ];

    private static IEnumerable<string> Facts(Plan plan, Stamp stamp)
    {
        yield return "Field book";
        if (plan.Kit.Site.Name.Length > 0)
        {
            yield return $"place: {plan.Kit.Site.Name}";
        }

        if (stamp.Date is not null)
        {
            yield return $"date: {stamp.DateText}";
        }

        yield return stamp.Content;
    }
}
