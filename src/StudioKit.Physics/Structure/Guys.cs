using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Cords at 45° from the top of a frame to pegs outside it.</summary>
public static class Guys
{
    /// <summary>Push at the top that one cord takes.</summary>
    /// <param name="hold">Pull that its peg bears F [N]; ≥ 0.</param>
    /// <returns>F·cos 45° [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hold is outside its range, or not finite.</exception>
    [Source("Derived", "components of a force at 45°")]
    public static double SidewaysHold(double hold) => Guard.NonNegative(hold) / Math.Sqrt(2);

    /// <summary>Force straight down on the windward feet that would hold the frame as well as one cord does.</summary>
    /// <param name="hold">Pull that its peg bears F [N]; ≥ 0.</param>
    /// <param name="height">Height of the frame's top h [m]; ≥ 0.</param>
    /// <param name="baseLength">Distance between the feet along the wind b [m]; &gt; 0.</param>
    /// <returns>F·(b + h)/(√2·b) [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>The cord runs from (0, h) to (−h, 0); the feet on the lee side, at (b, 0), lie (b + h)/√2 from its line.</remarks>
    [Source("Derived", "moment of the cord about the feet on the lee side")]
    public static double WindwardHold(double hold, double height, double baseLength) =>
        SidewaysHold(hold) * (Guard.Positive(baseLength) + Guard.NonNegative(height)) / baseLength;
}
