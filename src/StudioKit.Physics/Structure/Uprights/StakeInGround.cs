using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>What a stake holds that is pushed sideways over the ground, from what it held when it was pulled as a test.</summary>
/// <remarks>A stiff stake in loose ground: the ground's resistance grows with depth, and the stake turns about its tip. Stakes in clay turn a little higher up, which is worth a few hundredths.</remarks>
public static class StakeInGround
{
    /// <summary>Moment about its tip at which it gives.</summary>
    /// <param name="hold">Level pull that it bore F [N]; ≥ 0.</param>
    /// <param name="pulledAt">Height of that pull over the ground e [m]; ≥ 0.</param>
    /// <param name="depth">Depth of the tip L [m]; &gt; 0.</param>
    /// <returns>F·(e + L) [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Broms1964", "short free-headed piles: P·(e + L) is the ground's alone")]
    public static double MomentAboutTip(double hold, double pulledAt, double depth) => Guard.NonNegative(hold) * (Guard.NonNegative(pulledAt) + Guard.Positive(depth));

    /// <summary>Depth at which it is bent most.</summary>
    /// <param name="push">Level push over the ground P [N]; ≥ 0.</param>
    /// <param name="momentAboutTip">Moment about its tip at which it gives M [N·m]; ≥ 0.</param>
    /// <param name="depth">Depth of the tip L [m]; &gt; 0.</param>
    /// <returns>√(P·L³/(3M)), at most L [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>M = γ·B·K_p·L³/2 gives what stands in f = 0.82·√(P/(γ·B·K_p)) and is not known of the ground.</remarks>
    [Source("Broms1964", "short free-headed piles: depth of the greatest moment")]
    public static double DepthOfGreatestMoment(double push, double momentAboutTip, double depth)
    {
        var (p, m, l) = (Guard.NonNegative(push), Guard.NonNegative(momentAboutTip), Guard.Positive(depth));
        return m > 0 ? Math.Min(l, Math.Sqrt(p * l * l * l / (3 * m))) : l;
    }

    /// <summary>Greatest bending moment in it.</summary>
    /// <param name="push">Level push over the ground P [N]; ≥ 0.</param>
    /// <param name="height">Height of the push over the ground e [m]; ≥ 0.</param>
    /// <param name="depthOfMoment">Depth of the greatest moment f [m]; ≥ 0.</param>
    /// <returns>P·(e + 2f/3) [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Broms1964", "short free-headed piles: greatest moment")]
    public static double GreatestMoment(double push, double height, double depthOfMoment) =>
        Guard.NonNegative(push) * (Guard.NonNegative(height) + (2 * Guard.NonNegative(depthOfMoment) / 3));
}
