using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>How long the shutter may stand open before wind and hand blur what the ambient light draws.</summary>
public static class AmbientBlur
{
    // A click that is longer by less than this blurs no more than anyone can see.
    private const double Unseen = 1.05;

    /// <summary>Longest shutter speed for a blur, on the dial's click that is not noticeably longer.</summary>
    /// <param name="magnification">Magnification m.</param>
    /// <param name="speed">Speed of the subject against the camera v; &gt; 0 m/s.</param>
    /// <param name="blur">Blur accepted on the sensor b; &gt; 0 m.</param>
    /// <returns>b/(m·v) on the nearest third-stop click, or the next shorter where that is over a twentieth longer; 1/8000 s to 30 s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Speed or blur is not above zero.</exception>
    [Source("Derived", "blur on the sensor is m·v·t")]
    public static ShutterSpeed LongestShutter(Magnification magnification, Speed speed, Length blur)
    {
        var v = Guard.Positive(speed.MetersPerSecond, nameof(speed));
        var b = Guard.Positive(blur.Meters, nameof(blur));
        var longest = new ShutterSpeed(Math.Clamp(b / (magnification.Value * v), 1.0 / 8000, 30));
        var nearest = ThirdStopSeries.Nearest(longest);
        return nearest.Seconds > longest.Seconds * Unseen ? ThirdStopSeries.Darker(nearest) : nearest;
    }
}
