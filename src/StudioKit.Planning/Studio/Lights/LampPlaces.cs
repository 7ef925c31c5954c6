using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Where the lights about a subject stand, as a cover sees them.</summary>
internal static class LampPlaces
{
    /// <summary>The lights that shine into a cover from without, with their glowing fronts; one below the panel has its sheet before it.</summary>
    public static IReadOnlyList<(LightSpec Light, CoverLamp Lamp)> Of(KitSpec kit, SetUpSpec setUp) =>
        [.. setUp.Lights.Where(light => light.Role != LightRole.Below).Select(light => (light, LampOf(kit, light)))];

    /// <summary>The place of a light, counted from the subject's foot.</summary>
    public static Position Of(LightSpec light)
    {
        var (azimuth, elevation) = DirectionOf(light.Role);
        var (aside, ahead) = Math.SinCos(azimuth * Math.PI / 180);
        var (up, level) = Math.SinCos(elevation * Math.PI / 180);
        var distance = light.Distance.Meters;
        return new Position(distance * level * aside, -distance * level * ahead, distance * up);
    }

    private static CoverLamp LampOf(KitSpec kit, LightSpec light)
    {
        var flash = LightingCases.Flash(kit, light);
        return new CoverLamp(Of(light), flash.HeadWidth, flash.HeadHeight);
    }

    // Degrees from the camera towards its right, and over the subject's level (common practice, no source).
    private static (double Azimuth, double Elevation) DirectionOf(LightRole role) => role switch
    {
        LightRole.Above => (-90, 45),
        LightRole.Key => (-45, 45),
        LightRole.Fill => (30, 45),
        _ => (150, 30),
    };
}
