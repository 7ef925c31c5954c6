using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Framing;

/// <summary>Depth of field against magnification at one f-number set on the lens.</summary>
/// <param name="Aperture">f-number set on the lens.</param>
/// <param name="Points">Magnifications and depths, smallest magnification first; for a lens with equal pupils.</param>
public sealed record DepthCurve(FNumber Aperture, IReadOnlyList<DepthPoint> Points);
