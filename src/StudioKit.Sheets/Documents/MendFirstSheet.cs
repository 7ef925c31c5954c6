using StudioKit.Planning;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What is to be mended before anything is bought, built or photographed; there is none where a plan passes all its checks.</summary>
internal static class MendFirstSheet
{
    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "To be mended first",
        stamp,
        page,
        [
            new Heading($"To be mended first: {plan.Kit.Name}"),
            new Paragraph("The plan fails some of its checks. Mend these before you buy, build or go out, and print again.", Weight: TextWeight.Bold),
            new ItemList([.. plan.Checks.Where(check => !check.Passed).Select(check => $"{CheckText.Name(check)}: {CheckText.Shortfall(check)}. {CheckText.Remedy(check)} {CheckText.Keys(check, plan)}".Trim())], ItemMarker.TickBox),
            .. Withheld(plan),
        ]);

    private static IEnumerable<Block> Withheld(Plan plan)
    {
        if (plan.OffRing.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Cards that cannot work, and are not printed", 2);
        yield return new Table(
            [new Column("Set-up"), new Column("Framing"), new Column("Why"), new Column("What would make it work")],
            [.. plan.OffRing.Select(exposure => new TableRow(
                [
                    exposure.SetUp, exposure.Framing.Name, VerdictText.Missed(exposure),
                    plan.Advice.Of(exposure).Mending is [var first, ..] ? AdviceText.Of(exposure, first) : "",
                ]))],
            TypeScale.Small);
    }
}
