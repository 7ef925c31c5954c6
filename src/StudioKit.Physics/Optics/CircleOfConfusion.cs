using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>The largest blur spot on the sensor that still passes for a point.</summary>
public static class CircleOfConfusion
{
    /// <summary>Circle of confusion as a share of the sensor's diagonal.</summary>
    /// <param name="sensorWidth">Longer side of the sensor [m]; &gt; 0.</param>
    /// <param name="sensorHeight">Shorter side of the sensor [m]; &gt; 0.</param>
    /// <param name="divisor">Parts that the diagonal is divided into [1]; &gt; 0.</param>
    /// <returns>Diameter c = √(w² + h²)/divisor [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "a 1500th of the diagonal")]
    public static double FromDiagonal(double sensorWidth, double sensorHeight, double divisor = 1500)
    {
        var w = Guard.Positive(sensorWidth);
        var h = Guard.Positive(sensorHeight);
        return Math.Sqrt((w * w) + (h * h)) / Guard.Positive(divisor);
    }
}
