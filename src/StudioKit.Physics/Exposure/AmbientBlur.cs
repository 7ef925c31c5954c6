using StudioKit.Physics.Optics;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure;

/// <summary>How long the shutter may stand open before wind and hand blur what the ambient light draws.</summary>
public static class AmbientBlur
{
    /// <summary>Longest shutter speed for a blur, on the dial's click that is not longer.</summary>
    /// <param name="magnification">Magnification m.</param>
    /// <param name="speed">Speed of the subject against the camera v; &gt; 0 m/s.</param>
    /// <param name="blur">Blur accepted on the sensor b; &gt; 0 m.</param>
    /// <returns>b/(m·v), brought down to a third-stop click, at most 30 s [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Speed or blur is not above zero.</exception>
    [Source("Derived", "blur on the sensor is m·v·t")]
    public static ShutterSpeed LongestShutter(Magnification magnification, Speed speed, Length blur)
    {
        var v = Guard.Positive(speed.MetersPerSecond, nameof(speed));
        var b = Guard.Positive(blur.Meters, nameof(blur));
        var seconds = Math.Clamp(b / (magnification.Value * v), 1.0 / 32_000, 32);
        return new ShutterSpeed(Math.Pow(2, Math.Floor((3 * Math.Log2(seconds)) + 1e-9) / 3));
    }
}
