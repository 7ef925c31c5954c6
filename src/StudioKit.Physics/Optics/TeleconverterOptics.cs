using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>What the optics must know of a teleconverter.</summary>
/// <param name="Factor">Factor by which it enlarges k [1]; ≥ 1.</param>
/// <param name="Length">How much longer it makes the outfit; ≥ 0 m.</param>
public readonly record struct TeleconverterOptics(double Factor, Length Length);
