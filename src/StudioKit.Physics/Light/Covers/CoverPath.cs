using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>Light on its straight way through the walls of a cover.</summary>
/// <remarks>
/// A wall shifts a ray by less than its thickness, which is left out of where the ray goes; so is the lens that a bent wall is, a tenth of a dioptre and less.
/// Walls far apart count one after the other, as what is thrown back between them goes elsewhere.
/// </remarks>
public static class CoverPath
{
    /// <summary>Where a straight line between two points goes through a cover.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="from">A point.</param>
    /// <param name="to">Another.</param>
    /// <returns>The places, from the first point on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "line cut with planes, a cylinder or a sphere")]
    public static IReadOnlyList<CoverCrossing> Crossings(CoverCase cover, Position from, Position to)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return [.. CoverSurface.Of(cover).SelectMany(surface => surface.Crossings(from, to)).OrderBy(crossing => crossing.At.SquareTo(from))];
    }

    /// <summary>Share of light that passes the walls of an empty cover between two points.</summary>
    /// <param name="cover">The cover; what water does is left to <see cref="CoverLighting"/>.</param>
    /// <param name="from">Where it comes from.</param>
    /// <param name="to">Where it goes.</param>
    /// <returns>Product of the transmittances of the walls in its way [1]; 1 where there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae, §1.5, at every wall")]
    public static double Transmittance(CoverCase cover, Position from, Position to) =>
        Crossings(cover, from, to).Aggregate(1.0, (share, crossing) => share * (crossing.Face == CoverFace.Water
            ? 1 - ClearWall.FaceReflectance(RefractiveIndex.Water, crossing.Incidence)
            : ClearWall.Transmittance(cover.RefractiveIndex, crossing.Incidence)));
}
