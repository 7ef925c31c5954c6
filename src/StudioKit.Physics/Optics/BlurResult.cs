using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Width of the blur spot on the sensor for one point of the subject.</summary>
/// <param name="Defocus">Part that lies in the point's distance from the focused plane.</param>
/// <param name="Diffraction">Part that lies in the wave nature of light.</param>
/// <param name="Total">Both, combined in quadrature.</param>
public sealed record BlurResult(Length Defocus, Length Diffraction, Length Total);
