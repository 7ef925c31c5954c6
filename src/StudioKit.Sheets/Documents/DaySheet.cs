using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Sun, shade and light of the day hour by hour, and what can be photographed in it.</summary>
internal static class DaySheet
{
    private static readonly string[] Sources =
        [Bibliography.Cite("Meeus1998", "ch. 13 and 25, the sun's place; ch. 16, refraction"), Bibliography.Cite("JaniczekDeYoung1987", "light of sun, sky and clouds"), Bibliography.Cite("AitDaylight", "its spread")];

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
                    new ItemList([.. session.Blocks.Select(block => $"{SessionText.Title(block)}. {DayText.Begin(block)}")], ItemMarker.Dot),
                ]
                : [],
            new Heading("Where the sun stands and shade falls", 2),
            Sun(day),
            .. Shadows(plan, day),
            new Heading("Light to expect, in EV at ISO 100", 2),
            Light(day),
            new Paragraph(DayText.Basis(day), TypeScale.Small),
            new ItemList([.. Sources], ItemMarker.Dot, TypeScale.Small),
        ]);

    private static IEnumerable<Block> Shadows(Plan plan, DayPlan day)
    {
        IReadOnlyList<Block> cautions = [.. CautionBlocks.Of(plan, CautionSheet.Session, kind => kind is CautionKind.Sun or CautionKind.Heat)];
        if (ShadowDrawing.Of(day) is not { } drawing)
        {
            return cautions;
        }

        var reading = new Paragraph("A shadow is so many times as long as what throws it is high: at 1.5, a hedge as high as you throws it one and a half times your height.", TypeScale.Small);
        return [new SideBySide([(new DrawingBlock(drawing, Caption: drawing.Description), 1.15), (new Stack([reading, .. cautions]), 0.85)])];
    }

    private static Table Sun(DayPlan day) => new(
        [new Column("Time"), new Column("Sun over the horizon", ColumnKind.Right), new Column("Sun stands"), new Column("Shadow, times the height", ColumnKind.Decimal), new Column("Shade falls to")],
        [.. day.Hours.Select(hour => new TableRow(
            [
                DayText.Time(hour.Minute), PlanFormat.Degrees(hour.Height), DayText.Direction(hour.Azimuth), DayText.Shadow(hour),
                hour.ShadowOverHeight is null ? "" : DayText.Direction(hour.ShadowDirection),
            ]))]);

    private static Table Light(DayPlan day) => new(
        [new Column("Time"), new Column("Sun"), new Column("Cloud"), new Column("Shade"), new Column("Can be photographed")],
        [.. day.Hours.Select(hour => new TableRow([DayText.Time(hour.Minute), .. hour.Lights.Select(DayText.Light), DayText.SetUps(hour)]))],
        TypeScale.Small);
}
