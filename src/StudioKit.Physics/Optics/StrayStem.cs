using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Stems out of focus before a sheet that is burnt out: how wide one may be and still leave the sheet white.</summary>
/// <remarks>Rays alone: diffraction spreads the stem's shadow further, and light that falls on the stem itself only makes it paler, so a stem vanishes no later than told.</remarks>
public static class StrayStem
{
    private const int Halvings = 50;

    /// <summary>Width of the pencil of rays that meets in one point of the plane in focus.</summary>
    /// <param name="offset">Distance d from the plane in focus, behind or before it; ≥ 0 m.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <returns>c = A·d/u = d·m/N_e, with the entrance pupil's diameter A = u·m/N_e at u from the plane in focus.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "similar triangles at the entrance pupil; A/u = m/N_e from Greivenkamp2004")]
    public static Length PencilWidth(Length offset, double magnification, double effectiveFNumber) =>
        Length.FromMeters(Guard.NonNegative(offset.Meters, nameof(offset)) * Guard.Positive(magnification) / Guard.Positive(effectiveFNumber));

    /// <summary>Share of the pencil that a stem through its middle keeps off.</summary>
    /// <param name="width">Width of the stem w; ≥ 0 m.</param>
    /// <param name="pencil">Width of the pencil c; ≥ 0 m.</param>
    /// <returns>f = 2/π·(asin s + s·√(1 − s²)) with s = w/c, and 1 from s = 1 on [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or not finite.</exception>
    [Source("Derived", "area of a disc between two chords at equal distances from its centre")]
    public static double BlockedShare(Length width, Length pencil)
    {
        var (w, c) = (Guard.NonNegative(width.Meters, nameof(width)), Guard.NonNegative(pencil.Meters, nameof(pencil)));
        return w >= c ? (w > 0 ? 1 : 0) : Blocked(w / c);
    }

    /// <summary>Widest stem, as a share of the pencil's width, that leaves the sheet white.</summary>
    /// <param name="margin">Stops by which the sheet lies above clipping.</param>
    /// <returns>The s at which log₂(1/(1 − f)) is the margin [1]; 0 for a sheet that does not clip, under 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The margin is not finite.</exception>
    [Source("Derived", "bisection on the blocked share, which grows with the stem")]
    public static double VanishingShare(Stops margin)
    {
        var share = 1 - (1 / Math.Pow(2, Math.Max(0, Guard.Finite(margin.Value, nameof(margin)))));
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Blocked(middle) <= share ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Widest stem at some distance from the plane in focus that leaves the sheet white.</summary>
    /// <param name="margin">Stops by which the sheet lies above clipping.</param>
    /// <param name="pencil">Width of the pencil where the stem is; ≥ 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "vanishing share of the pencil's width")]
    public static Length WidestVanishing(Stops margin, Length pencil) =>
        Length.FromMeters(VanishingShare(margin) * Guard.NonNegative(pencil.Meters, nameof(pencil)));

    /// <summary>Distance from the plane in focus from which on a stem leaves the sheet white.</summary>
    /// <param name="width">Width of the stem w; ≥ 0 m.</param>
    /// <param name="margin">Stops by which the sheet lies above clipping.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <returns>d = w·N_e/(s·m); none where no stem vanishes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "pencil's width solved for the distance")]
    public static Length? VanishesFrom(Length width, Stops margin, double magnification, double effectiveFNumber)
    {
        var share = VanishingShare(margin);
        var distance = Guard.NonNegative(width.Meters, nameof(width)) * Guard.Positive(effectiveFNumber) / Guard.Positive(magnification);
        return share > 0 ? Length.FromMeters(distance / share) : null;
    }

    /// <summary>Side of the room that the camera looks through at some distance behind the plane in focus.</summary>
    /// <param name="field">Side of the field in the plane in focus; ≥ 0 m.</param>
    /// <param name="offset">Distance d behind the plane in focus; ≥ 0 m.</param>
    /// <param name="pupilDistance">Entrance pupil to the plane in focus u; &gt; 0 m.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <returns>a·(1 + d/u) + d·m/N_e: the field as the pupil's middle sees it, and half a pencil on either side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "similar triangles at the entrance pupil; A/u = m/N_e from Greivenkamp2004")]
    public static Length SeenAcross(Length field, Length offset, Length pupilDistance, double magnification, double effectiveFNumber) =>
        (Length.FromMeters(Guard.NonNegative(field.Meters, nameof(field))) * (1 + (offset.Meters / Guard.Positive(pupilDistance.Meters, nameof(pupilDistance)))))
        + PencilWidth(offset, magnification, effectiveFNumber);

    private static double Blocked(double share) => 2 / Math.PI * (Math.Asin(share) + (share * Math.Sqrt(1 - (share * share))));
}
