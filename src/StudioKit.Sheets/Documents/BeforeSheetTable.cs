using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Documents;

/// <summary>What the sheet behind the subject does to its edges, and which stems vanish before that sheet: a row for each framing of one set-up.</summary>
internal static class BeforeSheetTable
{
    public static IEnumerable<Block> Of(IReadOnlyList<ExposurePlan> setUp)
    {
        if (setUp.Any(exposure => exposure.StrayStems is not null))
        {
            yield return new KeepTogether(new Stack(
                [
                    new Paragraph("Stems between the subject and the sheet", TypeScale.Small, TextWeight.Bold),
                    Stems([.. setUp.Where(exposure => exposure.StrayStems is not null)]),
                    new Paragraph(
                        "A stem vanishes where the darkest place of the sheet stays white past it, by rays alone; light that falls on it only helps. As far before the subject it vanishes as well, but lies over the subject too.",
                        TypeScale.Small),
                ],
                0.8));
        }

        if (setUp.Any(exposure => exposure.EdgeSpill is not null))
        {
            yield return new KeepTogether(new Stack(
                [new Paragraph("The sheet's light on the subject's edges, stops against the lights on the subject", TypeScale.Small, TextWeight.Bold), Edges([.. setUp.Where(exposure => exposure.EdgeSpill is not null)])], 0.8));
        }
    }

    private static Table Stems(IReadOnlyList<ExposurePlan> framings) => new(
        [
            new Column("Framing"), new Column("Widest half way", ColumnKind.Right), new Column("Widest at the sheet", ColumnKind.Right),
            .. framings[0].StrayStems!.Stems.Select(stem => new Column($"{PlanFormat.Millimetres(stem.Width)} wide vanishes from", ColumnKind.Right)), new Column("Looked at of the sheet"),
        ],
        [.. framings.Select(framing => (framing.Framing.Name, Stems: framing.StrayStems!)).Select(of => new TableRow(
        [
            of.Name, Widest(of.Stems.WidestHalfWay), Widest(of.Stems.WidestAtSheet), .. of.Stems.Stems.Select(StrayStemText.From), StrayStemText.Room(of.Stems),
        ]))],
        TypeScale.Small);

    private static string Widest(Length width) => width > Length.Zero ? StrayStemText.Width(width) : "none";

    private static Table Edges(IReadOnlyList<ExposurePlan> framings) => new(
        [new Column("Framing"), .. Enum.GetValues<SubjectLimb>().Select(limb => new Column($"{limb} edge", ColumnKind.Right)), new Column("At its strongest")],
        [.. framings.Select(framing => new TableRow(
        [
            framing.Framing.Name,
            .. Enum.GetValues<SubjectLimb>().Select(limb => EdgeSpillText.Against(framing.EdgeSpill!.Limbs.FirstOrDefault(one => one.Limb == limb))),
            EdgeSpillText.Strongest(framing.EdgeSpill!),
        ]))],
        TypeScale.Small);
}
