using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>
/// Settings for a black background: daylight pushed under, a key light, rim lights from behind, the background out of the flash's
/// reach.
/// </summary>
/// <remarks>Light of the flashes before the subject falls on the background by the inverse-square law; rim lights point away from it.</remarks>
public static class DarkBackgroundSetUp
{
    /// <summary>Finds the settings.</summary>
    /// <param name="setUp">Flashes, camera, background, light of the place and limits.</param>
    /// <returns>Settings, levels and, where there are none that work, the limit in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 10/S, solved for speed and power")]
    public static SetUpResult Solve(DarkBackgroundCase setUp) => SetUpCamera.FirstThatWorks(setUp, SolveAt);

    /// <summary>How far behind the subject a background must lie so that a flash lights it by no more than a level.</summary>
    /// <param name="flashDistance">Flash to subject d; &gt; 0 m.</param>
    /// <param name="under">Stops under the subject's light; ≥ 0.</param>
    /// <returns>d·(2^(stops/2) − 1) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above zero or the stops are negative.</exception>
    [Source("CommonPractice", "inverse-square law")]
    public static Length BackgroundDistance(Length flashDistance, Stops under) => Length.FromMeters(
        Guard.Positive(flashDistance.Meters, nameof(flashDistance)) * (Math.Pow(2, Guard.NonNegative(under.Value, nameof(under)) / 2) - 1));

    private static SetUpResult SolveAt(DarkBackgroundCase setUp, CameraCase camera) =>
        SetUpCamera.InSync(setUp, camera, inSync => SolveWith(setUp, inSync));

    private static SetUpResult SolveWith(DarkBackgroundCase setUp, CameraCase camera)
    {
        var under = Guard.NonNegative(setUp.BackgroundUnder.Value, nameof(setUp.BackgroundUnder));
        var ambient = SetUpCamera.AmbientAtIso100(setUp.Ambient, camera, camera.Shutter);
        var window = new IsoWindow(setUp.Limits);
        window.AtMost(-under - ambient, IsoBound.Ambient);
        foreach (var (light, target) in Targets(setUp))
        {
            var flash = PowerCap.Apply(light.Flash, setUp.Limits);
            SubjectLighting.Bound(ref window, flash, SubjectLighting.AtIso100(flash, camera), target, target);
        }

        var iso = window.Choose(IsoWindow.StopsOf(camera.Iso), setUp.Limits, out var conflict);
        return Judge(setUp, camera with { Iso = IsoWindow.SpeedAt(iso) }, ambient + iso, conflict);
    }

    private static IEnumerable<(SubjectLight Light, double Target)> Targets(DarkBackgroundCase setUp) =>
        setUp.Lights.Select(light => (light, SubjectLighting.Target(setUp.Lights, light, 0)))
            .Concat(setUp.Rims.Select(rim => (rim, rim.Level.Value)));

    private static SetUpResult Judge(DarkBackgroundCase setUp, CameraCase camera, double ambient, MissedLimit? conflict)
    {
        LightSolution[] lights =
        [
            .. Targets(setUp).Select(pair => SubjectLighting.Set(
                PowerCap.Apply(pair.Light.Flash, setUp.Limits), camera, pair.Target, setUp.Uncertainty)),
        ];
        var front = lights.Take(setUp.Lights.Count).ToArray();
        var background = CombinedLight.Sum([.. front.Select(light => OnBackground(light, setUp)), new Stops(ambient)]);
        return new SetUpResult
        {
            Camera = camera,
            Lights = lights,
            AmbientLevel = new Stops(ambient),
            SubjectShade = setUp.SubjectShade,
            SubjectLevel = SubjectLighting.Total(front, ambient + setUp.SubjectShade.Value),
            IsoAboveBase = new Stops(IsoWindow.StopsOf(camera.Iso) - IsoWindow.StopsOf(setUp.Limits.LowestIso)),
            BackgroundLevel = background,
            Missed = [.. MissedLimit.Any(conflict), .. SubjectLighting.Broken(lights, setUp.Limits), .. MissedLimit.Any(TooNear(setUp, front))],
            Caveats = [.. SetUpCamera.SyncCaveat(setUp.Camera.Shutter, setUp.Limits)],
        };
    }

    private static Stops OnBackground(LightSolution light, DarkBackgroundCase setUp)
    {
        var d = light.Flash.Distance.Meters;
        var behind = Guard.NonNegative(setUp.BackgroundDistance.Meters, nameof(setUp.BackgroundDistance));
        return light.Power.Level - new Stops(2 * Math.Log2((d + behind) / d));
    }

    private static MissedLimit.LightsBackground? TooNear(DarkBackgroundCase setUp, LightSolution[] front)
    {
        if (front.Length == 0)
        {
            return null;
        }

        var flash = CombinedLight.Sum([.. front.Select(light => OnBackground(light, setUp))]);
        return -flash.Value >= setUp.BackgroundUnder.Value - 0.25
            ? null
            : new MissedLimit.LightsBackground(setUp.BackgroundDistance, flash, -setUp.BackgroundUnder);
    }
}
