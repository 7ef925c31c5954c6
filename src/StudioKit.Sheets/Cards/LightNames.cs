using StudioKit.Kits.SetUps;
using StudioKit.Planning;

namespace StudioKit.Sheets.Cards;

/// <summary>Words for the flashes of a set-up.</summary>
internal static class LightNames
{
    public static string Role(LightRole role) => role switch
    {
        LightRole.Below => "Below",
        LightRole.Above => "Above",
        LightRole.Key => "Key",
        LightRole.Fill => "Fill",
        _ => "Rim",
    };

    public static string WithModifier(LightPlan light) => $"{light.Flash}, {light.Modifier ?? "bare"}";

    public static string WithZoom(LightPlan light) => $"{WithModifier(light)}, {PlanFormat.Zoom(light.Zoom)}";
}
