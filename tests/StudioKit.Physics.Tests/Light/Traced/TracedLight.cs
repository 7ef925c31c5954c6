namespace StudioKit.Physics.Tests.Light.Traced;

/// <summary>A mean over paths [lx·s] and its standard error [lx·s].</summary>
internal readonly record struct TracedLight(double Exposure, double StandardError);
