using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Scale;

/// <summary>Size at the subject that one pixel covers.</summary>
public static class PixelScale
{
    /// <summary>Size of a pixel at the subject, from the framing.</summary>
    /// <param name="sensorSide">Longer side of the sensor [m]; &gt; 0.</param>
    /// <param name="pixels">Pixels along the picture's longer side, uncropped [1]; ≥ 1. A picture made smaller has larger pixels.</param>
    /// <param name="magnification">Magnification m [1]; &gt; 0.</param>
    /// <returns>Size of a pixel at the subject, w/(n·m) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "pixel pitch over magnification")]
    public static double FromFraming(double sensorSide, int pixels, double magnification) =>
        Guard.Positive(sensorSide) / Guard.Positive(pixels) / Guard.Positive(magnification);
}
