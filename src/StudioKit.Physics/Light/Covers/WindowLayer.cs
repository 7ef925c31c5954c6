namespace StudioKit.Physics.Light.Covers;

/// <summary>One layer of a flat window.</summary>
/// <param name="Thickness">Thickness t [m]; ≥ 0.</param>
/// <param name="RefractiveIndex">Index against air n [1]; ≥ 1.</param>
public readonly record struct WindowLayer(double Thickness, double RefractiveIndex);
