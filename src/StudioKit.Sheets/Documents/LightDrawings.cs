using StudioKit.Planning;

namespace StudioKit.Sheets.Documents;

/// <summary>The drawings of the light on the panel, set-up by set-up.</summary>
internal static class LightDrawings
{
    /// <summary>Map, section and place of the flash; numbered where a kit lights several sheets or set-ups.</summary>
    public static IEnumerable<NamedDrawing> Of(Plan plan)
    {
        List<PanelLightPlan> lights = [.. plan.SheetLights];
        return lights.SelectMany((light, index) =>
        {
            var number = lights.Count > 1 ? FormattableString.Invariant($"-{index + 1}") : "";
            return Of(light).Select(named => named with { Name = named.Name + number });
        });
    }

    private static IEnumerable<NamedDrawing> Of(PanelLightPlan light)
    {
        if (light.Flashes.Count == 0)
        {
            yield break;
        }

        if (LightMapDrawing.Of(light) is { } map)
        {
            yield return new NamedDrawing("light-map", map);
        }

        yield return new NamedDrawing("studio-section", StudioSectionDrawing.Of(light));
        if (light.Upright is null)
        {
            yield return new NamedDrawing("flash-place", FlashPlaceDrawing.Of(light));
        }
    }
}
