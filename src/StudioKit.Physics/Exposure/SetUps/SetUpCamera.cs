using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Moves a camera's settings within their limits.</summary>
internal static class SetUpCamera
{
    /// <summary>
    /// Tries the f-numbers to choose from in order, and each with the sync speed where the slower one asked for fails.
    /// </summary>
    public static SetUpResult FirstThatWorks<TCase>(TCase setUp, Func<TCase, CameraCase, SetUpResult> solve)
        where TCase : SetUpCase
    {
        ArgumentNullException.ThrowIfNull(setUp);
        if (setUp.Apertures.Count == 0)
        {
            return solve(setUp, setUp.Camera);
        }

        SetUpResult? favourite = null;
        foreach (var aperture in setUp.Apertures)
        {
            var result = solve(setUp, setUp.Camera.WithAperture(aperture));
            if (result.Works)
            {
                return result;
            }

            favourite ??= result;
        }

        return favourite!;
    }

    /// <summary>The shutter speed asked for, slowed to flash sync where it is too fast.</summary>
    public static ShutterSpeed WithinSync(ShutterSpeed wanted, SetUpLimits limits) =>
        wanted.Seconds < limits.FlashSync.Seconds ? limits.FlashSync : wanted;

    /// <summary>Solves with the shutter asked for, slowed to sync where it is too fast, and with the sync speed where that slower one fails.</summary>
    public static SetUpResult InSync(SetUpCase setUp, CameraCase camera, Func<CameraCase, SetUpResult> solve)
    {
        var shutter = WithinSync(camera.Shutter, setUp.Limits);
        var result = solve(camera with { Shutter = shutter });
        return result.Works || shutter.Seconds <= setUp.Limits.FlashSync.Seconds
            ? result
            : solve(camera with { Shutter = setUp.Limits.FlashSync });
    }

    /// <summary>Ambient level at ISO 100, filters counted [stops]; a speed adds its own stops.</summary>
    public static double AmbientAtIso100(ExposureValue ambient, CameraCase camera, ShutterSpeed shutter) =>
        AmbientLight.Level(ambient, camera.Effective, shutter, new IsoSpeed(100)).Value - camera.FilterLoss.Value - camera.CoverLoss.Value;

    /// <summary>Caveat for a shutter speed that had to be slowed to sync.</summary>
    public static IEnumerable<string> SyncCaveat(ShutterSpeed wanted, SetUpLimits limits) =>
        SyncLimit.Check(wanted, limits.FlashSync).IsWithin
            ? []
            : [$"{wanted} is faster than flash sync; {limits.FlashSync} is set instead."];
}
