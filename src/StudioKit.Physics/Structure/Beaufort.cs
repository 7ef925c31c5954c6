using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Beaufort's scale of wind force, as wind speeds 10 m over open ground.</summary>
[Source("Beaufort", "wind speeds")]
public static class Beaufort
{
    // Lowest speed of force 1, 2, … 12 [m/s].
    private static readonly double[] From = [0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7];

    /// <summary>Force of a wind.</summary>
    /// <param name="speed">Wind speed v [m/s]; ≥ 0.</param>
    /// <returns>Beaufort number [1]; 0 to 12.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range, or not finite.</exception>
    [Source("Beaufort", "wind speeds")]
    public static int ForceOf(double speed)
    {
        Guard.NonNegative(speed);
        return From.Count(lowest => speed >= lowest);
    }

    /// <summary>Strongest wind of a force, to a tenth.</summary>
    /// <param name="force">Beaufort number [1]; 0 to 11.</param>
    /// <returns>Wind speed [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range; force 12 has no upper end.</exception>
    [Source("Beaufort", "wind speeds")]
    public static double StrongestOf(int force)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(force);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(force, 11);
        return Math.Round(From[force] - 0.1, 1);
    }
}
