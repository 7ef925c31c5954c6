using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Whether a flash lights the whole frame at a shutter speed, and what to do when it does not.</summary>
public static class SyncLimit
{
    // Marked times are rounded by up to a tenth of a stop, so 1/200 s and its exact 1/203 s are one setting.
    private const double MarkTolerance = 0.1;

    /// <summary>Compares a shutter speed with the camera's flash sync.</summary>
    /// <param name="shutter">Shutter speed wanted.</param>
    /// <param name="sync">Shortest time at which a flash lights the whole frame.</param>
    /// <returns>Whether it is slow enough, by how many stops it is too fast, and the ways out.</returns>
    [Source("CommonPractice", "focal-plane shutters and flash sync")]
    public static SyncCheck Check(ShutterSpeed shutter, ShutterSpeed sync)
    {
        var over = Math.Log2(sync.Seconds / shutter.Seconds);
        if (over <= MarkTolerance)
        {
            return new SyncCheck(true, new Stops(0), []);
        }

        var stops = ThirdStopText.Count(Math.Ceiling((over * 3) - 1e-9) / 3);
        return new SyncCheck(false, new Stops(over),
        [
            $"Set {sync} and stop down by {stops}.",
            $"Set {sync} and lower the ISO by {stops}.",
            $"Set {sync} and put a neutral-density filter of {stops} before the lens.",
        ]);
    }
}
