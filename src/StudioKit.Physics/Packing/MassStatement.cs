using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>A mass and where it comes from.</summary>
/// <param name="Mass">The mass.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record MassStatement(Mass Mass, MassOrigin Origin);
