using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>What a cover takes of the light that goes into it.</summary>
public static class CoverLighting
{
    // Light that grazes a wall does not get in: twenty stops are as good as none.
    private const double Grazing = 1e-6;

    /// <summary>Light of a lamp that is lost on its way to the subject, a positive number of stops.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="lamp">Where the lamp stands.</param>
    /// <param name="subject">The lit point inside.</param>
    /// <returns>−log₂ of what passes the walls, or the water's surface or a wall and the water behind it [stops].</returns>
    /// <remarks>Water also gathers light a little, by less than a fifth of a stop for a lamp four depths of water away; that is left out.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae, §1.5, at the angle that the law of refraction gives")]
    public static Stops LossToSubject(CoverCase cover, Position lamp, Position subject)
    {
        ArgumentNullException.ThrowIfNull(cover);
        var through = cover.HoldsWater ? IntoWater(cover, lamp, subject) : CoverPath.Transmittance(cover, lamp, subject);
        return Stops.FromRatio(1 / Math.Max(Grazing, through));
    }

    /// <summary>Diffuse daylight lost on its way in, a positive number of stops.</summary>
    /// <param name="cover">The cover.</param>
    /// <returns>−log₂ of what passes one wall, or the water's surface, from all sides [stops].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "transmittance weighted by the cosine over the half-space")]
    public static Stops DiffuseLoss(CoverCase cover)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return Stops.FromRatio(1 / (cover.HoldsWater
            ? ClearWall.DiffuseTransmittance(1, RefractiveIndex.Water)
            : ClearWall.DiffuseTransmittance(cover.RefractiveIndex)));
    }

    /// <summary>Light of a matt subject in water that its surface spreads, a positive number of stops.</summary>
    /// <param name="cover">The cover.</param>
    /// <returns>2·log₂ n [stops]; 0.83 in water, 0 in air.</returns>
    /// <remarks>A pencil of light widens as it leaves the water, so its radiance falls by n²; what lies in air beneath the tank is not concerned, as it came in by the same law.</remarks>
    [Source("WaterRadiance", "radiance over n² stays the same through a face")]
    [Source("PopeFry1997", "absorption of water, which is left out: 0.0044/m at 418 nm, the least")]
    public static Stops SpreadByWater(CoverCase cover)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return new Stops(2 * Math.Log2(cover.Inside));
    }

    private static double IntoWater(CoverCase cover, Position lamp, Position subject)
    {
        var crossings = CoverPath.Crossings(cover, lamp, subject);
        return crossings.Count == 0 ? 1 : crossings.SkipLast(1).Aggregate(
            Entering(cover, lamp, subject, crossings[^1].Face),
            (share, dry) => share * ClearWall.Transmittance(cover.RefractiveIndex, dry.Incidence));
    }

    // The last face before the subject has water behind it.
    private static double Entering(CoverCase cover, Position lamp, Position subject, CoverFace face)
    {
        var behind = CoverWindow.Behind(cover, face, subject);
        var (ahead, aside) = CoverWindow.Before(face, lamp, subject, behind.Sum(layer => layer.Thickness));
        var incidence = ahead > 0 ? LayeredWindow.IncidenceBetween(behind, ahead, aside) : 0;
        return face == CoverFace.Water
            ? ClearWall.Transmittance(1, incidence, RefractiveIndex.Water)
            : ClearWall.Transmittance(cover.RefractiveIndex, incidence, RefractiveIndex.Water);
    }
}
