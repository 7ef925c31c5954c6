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

    /// <summary>Load at which a leg and the push fits that hold it upright give way together.</summary>
    /// <param name="critical">Euler load of the leg with joints that do not turn P_E [N]; &gt; 0.</param>
    /// <param name="height">Height of the frame h [m]; &gt; 0.</param>
    /// <param name="jointStiffness">Rotational stiffness of one push fit kθ [N·m/rad]; &gt; 0.</param>
    /// <param name="jointsPerLeg">Push fits on one leg that turn as the frame leans j [1]; ≥ 1.</param>
    /// <returns>1/(1/P_E + h/(j·kθ)) [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>A stiff leg on turning joints leans over at j·kθ/h; the two ways of failing are added as reciprocals, which errs on the safe side.</remarks>
    [Source("Derived", "Dunkerley's sum of reciprocals over leg and joints")]
    public static double WithJoints(double critical, double height, double jointStiffness, int jointsPerLeg)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(jointsPerLeg, 1);
        return 1 / ((1 / Guard.Positive(critical)) + (Guard.Positive(height) / (jointsPerLeg * Guard.Positive(jointStiffness))));
    }
}
