using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Blur of a subject at one marked f-number, as wide as it looks at the subject.</summary>
/// <param name="Aperture">f-number set on the lens.</param>
/// <param name="Nearest">Blur at the subject's point nearest the camera.</param>
/// <param name="Middle">Blur in the focused plane, where diffraction alone is left.</param>
/// <param name="Farthest">Blur at its farthest point.</param>
public sealed record ApertureBlur(FNumber Aperture, Length Nearest, Length Middle, Length Farthest)
{
    /// <summary>The larger of the blurs at both ends.</summary>
    public Length Worst => Nearest > Farthest ? Nearest : Farthest;
}
