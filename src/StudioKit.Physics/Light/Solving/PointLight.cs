namespace StudioKit.Physics.Light.Solving;

/// <summary>Light at a set of points: flash by flash and by reflection [lx·s], and where it went.</summary>
internal sealed record PointLight(double[][] Direct, double[] Interreflected, LightBalance? Balance);
