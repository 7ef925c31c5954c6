using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Load at which a slender leg buckles.</summary>
public static class LegBuckling
{
    /// <summary>Share of short-term stiffness left to PVC under a load that stands for weeks [1].</summary>
    public const double PvcCreepShare = 0.65;

    /// <summary>Euler load.</summary>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <param name="length">Length L [m]; &gt; 0.</param>
    /// <param name="effectiveLengthFactor">Factor K [1]; &gt; 0: 1 hinged at both ends, 2 held at one end and free at the other, 0.7, 0.5.</param>
    /// <returns>π²EI/(K·L)² [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "columns, critical loads")]
    public static double CriticalLoad(double stiffness, double length, double effectiveLengthFactor)
    {
        var effective = Guard.Positive(length) * Guard.Positive(effectiveLengthFactor);
        return Math.PI * Math.PI * Guard.Positive(stiffness) / (effective * effective);
    }
}
