using StudioKit.Planning;

namespace StudioKit.Sheets.Cards;

/// <summary>Words for the flashes of a set-up.</summary>
internal static class LightNames
{
    public static string WithModifier(LightPlan light) => $"{light.Flash}, {light.Modifier ?? "bare"}";

    public static string WithZoom(LightPlan light) => $"{WithModifier(light)}, {PlanFormat.Zoom(light.Zoom)}";
}
