using StudioKit.Physics.Light.Views;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What a sheet says of the light on the panel in one set-up.</summary>
internal static class LightSection
{
    private const double TablePt = 8;

    /// <summary>Table, section, what to mind, and map.</summary>
    public static IEnumerable<Block> Of(Plan plan, PanelLightPlan light)
    {
        yield return new Heading(light.Upright is { } upright ? $"Light on the {upright}: {light.SetUp}" : $"Light on the panel: {light.SetUp}", 2);
        if (light.Problems.Count > 0)
        {
            yield return new Caution(string.Join(" ", LightProblemText.Of(light)), $"The flash cannot light the {light.Upright ?? "panel"} as the kit places it");
        }

        if (plan.UprightLights.FirstOrDefault(lit => ReferenceEquals(lit.Sheet, light)) is { } behind)
        {
            yield return new ItemList([UprightText.Stands(plan, behind), .. behind.Flashes.Select(UprightText.Flash)], ItemMarker.Dot);
        }

        if (light.Framings.Count > 0)
        {
            yield return new Paragraph(
                $"Power is set for the darkest visible point over all camera angles, not for the middle: there the margin is at least {light.TargetMargin.Nominal} stop over clipping. "
                + $"Margins in stops over clipping; places count from {(light.Upright is null ? "the subject's foot" : "the point level behind the subject's middle")} as the camera sees them. Veil is the lift of a mid-tone by glare, an upper bound{(light.Upright is null ? "; glow is the light on the subject's underside against the lights above" : "")}.");
            yield return Margins(light);
        }

        // A section and what to mind fill the page that the larger map does not fit on.
        if (light.Flashes.Count > 0)
        {
            yield return Drawn(StudioSectionDrawing.Of(light));
        }

        foreach (var block in light.Framings.Count > 0 ? Warnings(plan, light) : [])
        {
            yield return block;
        }

        if (light.Flashes.Count > 0 && LightMapDrawing.Of(light) is { } map)
        {
            yield return Drawn(map);
        }

        yield return new ItemList(light.Caveats, ItemMarker.Dot, TypeScale.Small);
    }

    private static IEnumerable<Block> Warnings(Plan plan, PanelLightPlan light)
    {
        var warned = plan.Exposures.Where(exposure => exposure.SetUp == light.SetUp)
            .SelectMany(exposure => WarningText.Of(exposure, plan.Advice).Select(text => $"{exposure.Framing.Name}: {text}")).ToList();
        return warned.Count == 0 ? [] : [new Paragraph("Mind", Weight: Fonts.TextWeight.Bold), new ItemList(warned, ItemMarker.Dot, TypeScale.Small)];
    }

    private static DrawingBlock Drawn(Drawing drawing) => new(drawing, MaxHeight: 175, Caption: drawing.Title);

    private static Table Margins(PanelLightPlan light) => new(
        [
            new Column("Framing"), new Column("Power"), new Column("Darkest", ColumnKind.Decimal), new Column($"where, {FigureFormat.FigureUnit}"), new Column("camera"),
            new Column("Brightest", ColumnKind.Decimal), new Column($"where, {FigureFormat.FigureUnit}"), new Column("Clips"),
            new Column("Veil", ColumnKind.Decimal), .. light.Upright is null ? [new Column("Glow", ColumnKind.Decimal)] : (Column[])[],
        ],
        [.. light.Framings.Select(framing => new TableRow(
            [
                framing.Framing,
                framing.IsUsable ? framing.Mark.Nominal : $"{framing.Mark.Nominal}, does not work",
                Stops(framing.Darkest.Margin), Place(light, framing.Darkest), MeasureFormat.Degrees(framing.DarkestView.Pitch),
                Stops(framing.Brightest.Margin), Place(light, framing.Brightest),
                MeasureFormat.Percent(Math.Round(framing.ClippedFraction, 2)),
                framing.Veil is { } veil ? Stops(veil) : "", .. light.Upright is null ? [framing.UplightAgainstKey is { } glow ? Stops(glow) : ""] : (string[])[],
            ]))],
        TablePt);

    private static string Place(PanelLightPlan light, MarginPoint point) => PlanFormat.PanelPlaceFigures(light, point.Place);

    private static string Stops(Physics.Exposure.Stops stops) => FormattableString.Invariant($"{stops.Value:+0.00;-0.00;0.00}");
}
