using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Sun, shade and light of the day hour by hour, and what can be photographed in it.</summary>
internal static class DaySheet
{
    public static SheetDocument Make(Plan plan, DayPlan day, Stamp stamp, PageSetup page) => new(
        "The day",
        stamp,
        page,
        [
            new Heading("The day"),
            new Paragraph(plan.Kit.Site.Name.Length == 0 ? $"{DayText.Title(day)}." : $"{plan.Kit.Site.Name}, {DayText.Title(day)}."),
            new Paragraph(DayText.Events(day)),
            .. plan.Session is { } session ? (Block[])
                [
                    new Heading("When to begin what", 2),
                    new ItemList([.. session.Blocks.Select(block => $"{SessionText.Title(block)}. {DayText.Begin(block)}")], ItemMarker.Dot, TypeScale.Small),
                ]
                : [],
            .. Shadows(plan, day),
            new Heading("Sun, shade and light by the hour, in EV at ISO 100", 2),
            Hours(day, withSetUps: plan.Session is null),
        ]);

    private static IEnumerable<Block> Shadows(Plan plan, DayPlan day)
    {
        IReadOnlyList<Block> notes = [.. CautionBlocks.Of(plan, CautionSheet.Session, kind => kind is CautionKind.Sun or CautionKind.Heat), new Paragraph(DayText.Basis(day), TypeScale.Small)];
        if (ShadowDrawing.Of(day) is not { } drawing)
        {
            return notes;
        }

        var reading = new Paragraph("A shadow is so many times as long as what throws it is high: at 1.5, a hedge as high as you throws it one and a half times your height.", TypeScale.Small);
        return [new SideBySide([(new DrawingBlock(drawing, Caption: drawing.Description), 1), (new Stack([reading, .. notes]), 1)])];
    }

    // Where there is a session, its blocks say when each can be photographed.
    private static Table Hours(DayPlan day, bool withSetUps) => new(
        [
            new Column("Time"), new Column("Sun over the horizon", ColumnKind.Right), new Column("Sun stands"), new Column("Shadow, times the height", ColumnKind.Decimal), new Column("Shade falls to"),
            new Column("Sun"), new Column("Cloud"), new Column("Shade"), .. withSetUps ? (Column[])[new Column("Can be photographed")] : [],
        ],
        [.. day.Hours.Select(hour => new TableRow(
            [
                DayText.Time(hour.Minute), MeasureFormat.Degrees(hour.Height), DayText.Direction(hour.Azimuth), DayText.Shadow(hour),
                hour.ShadowOverHeight is null ? "" : DayText.Direction(hour.ShadowDirection), .. hour.Lights.Select(DayText.Light), .. withSetUps ? (string[])[DayText.SetUps(hour)] : [],
            ]))],
        TypeScale.Smallest);
}
