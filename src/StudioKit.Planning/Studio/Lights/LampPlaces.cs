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
        [.. setUp.Lights.Where(light => !light.Role.IsBackground()).Select(light => (light, LampOf(kit, light)))];

    /// <summary>The place of a light about the subject, counted from its foot.</summary>
    public static Position Of(LightSpec light) => light.From!.Value.PlaceFrom(new Position(0, 0, 0), light.Distance);

    private static CoverLamp LampOf(KitSpec kit, LightSpec light)
    {
        var flash = LightingCases.Flash(kit, light);
        return new CoverLamp(Of(light), flash.HeadWidth, flash.HeadHeight);
    }
}
