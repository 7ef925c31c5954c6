using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>What a sheet says of the light on the panel in one set-up.</summary>
internal static class LightSection
{
    private const double TablePt = 8;

    /// <summary>Table, map, section and place of the flash.</summary>
    public static IEnumerable<Block> Of(PanelLightPlan light)
    {
        yield return new Heading($"Light on the panel: {light.SetUp}", 2);
        if (light.Problems.Count > 0)
        {
            yield return new Caution(string.Join(" ", light.Problems), "The flash cannot light the panel as the kit places it");
        }

        if (light.Framings.Count > 0)
        {
            yield return new Paragraph(
                $"Power is set for the darkest visible point over all camera angles, not for the middle: there the margin is at least {light.TargetMargin.Nominal} stop over clipping. "
                + "Places count from the subject's foot, right and behind as the camera sees them.");
            yield return Margins(light);
        }

        foreach (var drawing in Drawings(light))
        {
            yield return new DrawingBlock(drawing, MaxHeight: 150, Caption: drawing.Title);
        }

        yield return new ItemList(light.Caveats, ItemMarker.Dot, TypeScale.Small);
    }

    private static IEnumerable<Drawing> Drawings(PanelLightPlan light)
    {
        if (light.Flashes.Count == 0)
        {
            yield break;
        }

        if (LightMapDrawing.Of(light) is { } map)
        {
            yield return map;
        }

        yield return StudioSectionDrawing.Of(light);
        yield return FlashPlaceDrawing.Of(light);
    }

    private static Table Margins(PanelLightPlan light) => new(
        [
            new Column("Framing"), new Column("Power below"), new Column("Darkest, stops", ColumnKind.Decimal), new Column("Where"),
            new Column("Brightest, stops", ColumnKind.Decimal), new Column("Where"), new Column("Frame that clips"),
            new Column("Veil, stops", ColumnKind.Decimal), new Column("Glow from below, stops", ColumnKind.Decimal),
        ],
        [.. light.Framings.Select(framing => new TableRow(
            [
                framing.Framing,
                framing.PowerReached ? framing.Power.Nominal : $"{framing.Power.Nominal}, out of reach",
                Stops(framing.Darkest.Margin), $"{PlanFormat.PanelPlace(light, framing.Darkest.Place)}, camera {PlanFormat.Degrees(framing.DarkestView.Pitch)}",
                Stops(framing.Brightest.Margin), PlanFormat.PanelPlace(light, framing.Brightest.Place),
                PlanFormat.Percent(Math.Round(framing.ClippedFraction, 2)),
                framing.Veil is { } veil ? Stops(veil) : "", framing.UplightAgainstKey is { } glow ? Stops(glow) : "",
            ]))],
        TablePt);

    private static string Stops(Physics.Exposure.Stops stops) => FormattableString.Invariant($"{stops.Value:+0.00;-0.00;0.00}");
}
