using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>A magnification and the depth of field there.</summary>
/// <param name="Magnification">Magnification.</param>
/// <param name="DepthOfField">Depth of field, near to far limit.</param>
public sealed record DepthPoint(Magnification Magnification, Length DepthOfField);
