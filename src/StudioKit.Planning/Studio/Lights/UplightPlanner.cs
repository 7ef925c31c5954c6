using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>How the panel's glow on the subject's underside compares with the lights above.</summary>
internal static class UplightPlanner
{
    // Lowest underside worth telling from the sheet itself.
    private static readonly Length Lowest = Length.FromMillimeters(1);

    /// <summary>Light thrown up against the light from above; none where nothing shines from above.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="panel">The panel.</param>
    /// <param name="lights">Its flashes at their powers.</param>
    /// <param name="subject">The longest subject that fits the frame; none where none does.</param>
    /// <param name="map">The panel's light at full power.</param>
    public static Stops? AgainstKey(KitSpec kit, SetUpSpec setUp, PanelPlan panel, IReadOnlyList<LightPlan> lights, SubjectSpec? subject, LightMap map)
    {
        var key = OnSubject(kit, setUp, lights);
        var power = lights.FirstOrDefault(light => light.Role == LightRole.Below)?.Power;
        var glow = map.LuminanceTime(Length.Zero, panel.SubjectFromFront, Direction.Up) * (power?.Fraction ?? 0);
        if (key <= 0 || glow <= 0)
        {
            return null;
        }

        var flat = panel.Depth - panel.SweptLength;
        return SubjectUplight.AgainstKey(SubjectUplight.FromRectangle(glow, panel.Width.Meters, flat.Meters, Underside(subject).Meters), key);
    }

    /// <summary>Luminous exposure of the subject by the lights on it [lx·s].</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="lights">Its flashes at their powers.</param>
    public static double OnSubject(KitSpec kit, SetUpSpec setUp, IReadOnlyList<LightPlan> lights) =>
        lights.Where(light => !light.Role.IsBackground()).Sum(light => OnSubject(kit, setUp, light));

    // Half way up the longest subject that fits the frame stands for its underside.
    private static Length Underside(SubjectSpec? subject)
    {
        var height = subject is null ? Lowest : SharpnessPlanner.HeightOf(subject) / 2;
        return height < Lowest ? Lowest : height;
    }

    private static double OnSubject(KitSpec kit, SetUpSpec setUp, LightPlan light)
    {
        var distance = light.Distance.Meters;
        return PanelScene.FullPowerIntensityTime(LightingCases.Flash(kit, setUp.Lights[light.Place])) * light.Power.Fraction * (-light.CoverLoss - light.LensLoss).Ratio / (distance * distance)
            * LightingCases.DirectionLoss(setUp, setUp.Lights[light.Place]).Ratio;
    }
}
