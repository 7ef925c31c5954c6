namespace StudioKit.Physics.Light;

/// <summary>A flat four-cornered part of a bright sheet, as bright all over and whichever way it is looked at.</summary>
/// <param name="LuminanceTime">Luminance times time Q_L [cd·s/m²]; ≥ 0.</param>
/// <param name="A">First corner, the others in order round its edge.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
/// <param name="D">Fourth corner.</param>
public readonly record struct GlowingPatch(double LuminanceTime, Position A, Position B, Position C, Position D);
