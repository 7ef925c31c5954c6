namespace StudioKit.Physics.Structure;

/// <summary>Something the wind presses on.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Area">Area across the wind [m²]; ≥ 0.</param>
/// <param name="Drag">Drag coefficient [1]; ≥ 0.</param>
/// <param name="Height">Height of its middle over ground [m]; ≥ 0.</param>
public sealed record WindSurface(string Name, double Area, double Drag, double Height);
