using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the lights of one set-up stand: both views, then a row for each light with what holds it and how soft it is.</summary>
internal static class LightPlaceTable
{
    private const double ViewsWidth = 120;
    private const double ViewsHeight = 36;

    /// <summary>The blocks; none where no light stands about the subject.</summary>
    public static IEnumerable<Block> Of(IReadOnlyList<ExposurePlan> setUp, IReadOnlyList<LightStandPlan> stands)
    {
        if (setUp.FirstOrDefault(exposure => stands.Any(stand => stand.Framing == exposure.Framing.Name)) is not { } shown)
        {
            yield break;
        }

        var drawn = stands.Where(stand => stand.Framing == shown.Framing.Name).ToList();
        yield return new KeepTogether(new Stack(
            [
                new Paragraph("Where the lights stand", TypeScale.Small, Fonts.TextWeight.Bold),
                new DrawingBlock(LightPlaceDrawing.Of(drawn, shown.CameraPitches, shown.OnPanel, ViewsWidth, ViewsHeight), TrueScale: true, Caption: ""),
                new Table(
                    [
                        new Column("Light"), new Column("From"), new Column("From the subject"), new Column("Held"), new Column("Softness"), new Column("Shadow, stops", ColumnKind.Right),
                        new Column("Direction, stops", ColumnKind.Right),
                    ],
                    [.. stands.GroupBy(stand => stand.Place).Select(light => new TableRow(Row([.. light])))],
                    TypeScale.Tables),
            ],
            1));
    }

    // The direction is one for all framings; the shadow differs by what else shines, and the reach by how high the subject is.
    private static string[] Row(IReadOnlyList<LightStandPlan> light) =>
    [
        $"{RoleText.Word(light[0].Role)}: {light[0].Flash}, {light[0].Modifier ?? "bare"}, {DistanceFormat.Centimetres(light[0].Distance)}",
        StandText.Direction(light[0].From),
        StandText.Sides(light[0]),
        StandText.Held(light.MaxBy(stand => stand.ReachNeeded)!),
        $"{StandText.Word(light[0].Softness)}, {StandText.Angles(light[0])}",
        Shadows(light),
        light[0].DirectionLoss.ToString(),
    ];

    private static string Shadows(IReadOnlyList<LightStandPlan> light)
    {
        var depths = light.Select(stand => stand.ShadowDepth?.Value).OfType<double>().ToList();
        return depths.Count == 0 ? "black" : StandText.Span(depths.Min(), depths.Max());
    }
}
