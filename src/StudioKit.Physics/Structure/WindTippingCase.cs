using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A studio that stands in the wind.</summary>
/// <param name="Speed">Gust; ≥ 0.</param>
/// <param name="Surfaces">What the wind presses on.</param>
/// <param name="Mass">Mass of all that stands, with the ballast it has; &gt; 0.</param>
/// <param name="LeewardArm">Mass centre to the line of the feet on the lee side; &gt; 0.</param>
/// <param name="WindwardArm">Mass centre to the line of the feet on the windward side; ≥ 0.</param>
/// <param name="Friction">Friction between feet and ground [1]; &gt; 0.</param>
/// <param name="SafetyFactor">Factor by which the holding moment must exceed the wind's [1]; ≥ 1.</param>
public sealed record WindTippingCase(
    Speed Speed,
    IReadOnlyList<WindSurface> Surfaces,
    Mass Mass,
    Length LeewardArm,
    Length WindwardArm,
    double Friction,
    double SafetyFactor)
{
    /// <summary>What the pegs on the windward feet hold down; ≥ 0.</summary>
    public Force WindwardPegs { get; init; } = Force.Zero;

    /// <summary>What all pegs hold against sliding; ≥ 0.</summary>
    public Force AllPegs { get; init; } = Force.Zero;
}
