namespace StudioKit.Physics.Light.Solving;

/// <summary>Light of one flash of axial intensity·time 1 cd·s at a set of points: straight and by reflection [lx·s], and where it went.</summary>
internal sealed record UnitLight(double[] Direct, double[] Interreflected, LightBalance? Balance);
