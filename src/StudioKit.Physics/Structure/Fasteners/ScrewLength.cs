using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Fasteners;

/// <summary>Lengths in which screws are sold, counted without the head.</summary>
public static class ScrewLength
{
    private const double Slack = 1e-6;
    private static readonly int[] Series = [20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200, 220, 240, 260, 280, 300];

    /// <summary>The shortest that is sold and no shorter than what is needed; none beyond 300 mm.</summary>
    /// <param name="needed">What is needed; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is below zero, or not finite.</exception>
    [Source("Iso888", "nominal lengths, without those in brackets")]
    public static Length? SoldFor(Length needed)
    {
        var least = Guard.NonNegative(needed.Millimeters, nameof(needed)) - Slack;
        return Series.Where(length => length >= least).Select(length => (Length?)Length.FromMillimeters(length)).FirstOrDefault();
    }
}
