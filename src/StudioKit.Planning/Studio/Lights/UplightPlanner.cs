using StudioKit.Kits;
using StudioKit.Kits.SetUps;
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
    public static Stops? AgainstKey(KitSpec kit, SetUpSpec setUp, PanelPlan panel, ExposurePlan exposure, LightMap map)
    {
        var key = exposure.Lights.Where(light => light.Role != LightRole.Below).Sum(light => OnSubject(kit, setUp, light));
        var power = exposure.Lights.FirstOrDefault(light => light.Role == LightRole.Below)?.Power;
        var glow = map.LuminanceTime(Length.Zero, panel.SubjectFromFront, Direction.Up) * (power?.Fraction ?? 0);
        if (key <= 0 || glow <= 0)
        {
            return null;
        }

        var flat = panel.Depth - panel.SweptLength;
        return SubjectUplight.AgainstKey(SubjectUplight.FromRectangle(glow, panel.Width.Meters, flat.Meters, Underside(kit, exposure).Meters), key);
    }

    // Half way up the longest subject that fits the frame stands for its underside.
    private static Length Underside(KitSpec kit, ExposurePlan exposure)
    {
        var height = kit.Subjects
            .Where(subject => exposure.Subjects.Count > 0 && subject.Name == exposure.Subjects[0])
            .Select(subject => SharpnessPlanner.HeightOf(subject) / 2)
            .DefaultIfEmpty(Lowest)
            .First();
        return height < Lowest ? Lowest : height;
    }

    private static double OnSubject(KitSpec kit, SetUpSpec setUp, LightPlan light)
    {
        var spec = setUp.Lights.First(candidate => candidate.Flash == light.Flash && candidate.Role == light.Role);
        var distance = light.Distance.Meters;
        return light.Power is { } power
            ? PanelScene.FullPowerIntensityTime(LightingCases.Flash(kit, spec)) * power.Fraction / (distance * distance)
            : 0;
    }
}
