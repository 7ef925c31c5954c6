using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Settings for a subject before its daylit habitat, with flash just under the daylight so that it does not show.</summary>
/// <remarks>
/// The habitat is exposed at the sync speed, the ISO following from it; where the highest ISO does not suffice the shutter is
/// slowed to its limit. Where even the
/// lowest ISO is too fast, the ways out are to stop down or to put a neutral-density filter before the lens.
/// </remarks>
public static class DaylightFillSetUp
{
    /// <summary>Finds the settings.</summary>
    /// <param name="setUp">Flashes, camera, light of the place and limits.</param>
    /// <returns>Settings, levels and, where there are none that work, the limit in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso2720", "exposure value of scene and settings, solved for shutter and speed")]
    public static SetUpResult Solve(DaylightFillCase setUp) => SetUpCamera.FirstThatWorks(setUp, SolveAt);

    private static SetUpResult SolveAt(DaylightFillCase setUp, CameraCase camera)
    {
        var settled = AmbientFirst.Settle(setUp, camera, setUp.Limits.FlashSync, setUp.BackgroundLevel.Value, out var limit);
        return FillLighting.Add(setUp, settled, setUp.FillLevel.Value, limit);
    }
}
