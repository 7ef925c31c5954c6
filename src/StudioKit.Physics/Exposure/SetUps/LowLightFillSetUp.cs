using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Settings for available light with flash as fill.</summary>
/// <remarks>
/// The shutter stands open as long as wind and hand allow, and the ISO comes last, with its price in noise as stops above the
/// camera's lowest.
/// A polariser before the lens dims daylight and flash alike.
/// </remarks>
public static class LowLightFillSetUp
{
    /// <summary>Finds the settings.</summary>
    /// <param name="setUp">Flashes, camera, light of the place and limits.</param>
    /// <returns>Settings, levels and, where there are none that work, the limit in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso2720", "exposure value of scene and settings, solved for speed")]
    public static SetUpResult Solve(LowLightFillCase setUp) => SetUpCamera.FirstThatWorks(setUp, SolveAt);

    private static SetUpResult SolveAt(LowLightFillCase setUp, CameraCase camera)
    {
        var longest = setUp.Limits.LongestShutter ?? camera.Shutter;
        var settled = AmbientFirst.Settle(setUp, camera, longest, setUp.AmbientLevel.Value, out var limit);
        return FillLighting.Add(setUp, settled, setUp.FillLevel.Value, limit);
    }
}
