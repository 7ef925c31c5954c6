using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>The Beaufort scale as mean speeds: ten-minute means, 10 m over open ground.</summary>
public static class Beaufort
{
    // Upper bounds of forces 0 to 11 [m/s]; force 12 has none.
    private static readonly double[] UpperBounds = [0.3, 1.5, 3.3, 5.4, 7.9, 10.7, 13.8, 17.1, 20.7, 24.4, 28.4, 32.6];

    /// <summary>The strongest force that is bounded above [1].</summary>
    public static int Strongest => UpperBounds.Length - 1;

    /// <summary>Highest mean speed of a force.</summary>
    /// <param name="force">Force [1]; 0 to 11.</param>
    /// <returns>Mean speed [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    [Source("Wmo306", "volume I.1, part A, section E")]
    public static double HighestMean(int force)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(force);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(force, Strongest);
        return UpperBounds[force];
    }

    /// <summary>The force of a mean speed.</summary>
    /// <param name="meanSpeed">Mean speed [m/s]; ≥ 0.</param>
    /// <returns>Force [1]; 0 to 12.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range, or not finite.</exception>
    [Source("Wmo306", "volume I.1, part A, section E")]
    public static int ForceOf(double meanSpeed)
    {
        var speed = Guard.NonNegative(meanSpeed);
        return UpperBounds.Count(bound => speed > bound + 1e-9);
    }
}
