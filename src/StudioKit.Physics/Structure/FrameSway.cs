using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>How far a pushed frame leans when its corners are dry push fits.</summary>
public static class FrameSway
{
    /// <summary>Sideways stiffness of equal legs with pinned feet under a rigid top.</summary>
    /// <param name="legs">Number of legs n [1]; ≥ 1.</param>
    /// <param name="height">Leg height h [m]; &gt; 0.</param>
    /// <param name="bendingStiffness">Bending stiffness EI of one leg [N·m²]; &gt; 0.</param>
    /// <returns>n·3EI/h³ [N/m], for corners that do not turn.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of beams, cantilever with end load")]
    public static double RigidCornerStiffness(int legs, double height, double bendingStiffness)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(legs, 1);
        return 3 * legs * Guard.Positive(bendingStiffness) / Math.Pow(Guard.Positive(height), 3);
    }

    /// <summary>Lean of the frame's top under a sideways push.</summary>
    /// <param name="push">Push F [N]; ≥ 0.</param>
    /// <param name="legs">Number of legs n [1]; ≥ 1.</param>
    /// <param name="height">Leg height h [m]; &gt; 0.</param>
    /// <param name="bendingStiffness">Bending stiffness EI of one leg [N·m²]; &gt; 0.</param>
    /// <param name="jointStiffness">Rotational stiffness of one push fit kθ [N·m/rad]; &gt; 0.</param>
    /// <param name="jointsPerLeg">Push fits on one leg that turn as the frame leans j [1]; ≥ 1.</param>
    /// <returns>F·h²/(n·j·kθ) + F·h³/(n·3EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>Legs turn as a whole about pinned feet, every joint takes its share, and bending adds as with one joint, which errs on the safe side.</remarks>
    [Source("Derived", "work of the push = energy in the joints and the bent legs")]
    public static double Lean(
        double push, int legs, double height, double bendingStiffness, double jointStiffness, int jointsPerLeg)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(jointsPerLeg, 1);
        Guard.NonNegative(push);
        var turning = height * height / (legs * jointsPerLeg * Guard.Positive(jointStiffness));

        return push * (turning + (1 / RigidCornerStiffness(legs, height, bendingStiffness)));
    }
}
