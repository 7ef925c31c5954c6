namespace StudioKit.Physics.Tests.Optics;

/// <summary>A surface of a lens: radius [mm], whether it is the stop, distance to the next [mm], index behind it, distance at the close setting [mm].</summary>
internal sealed record LensSurface(double Radius, bool IsStop, double Distance, double Index, double Close);
