using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>How focusing closer than infinity dims the image that a lens throws.</summary>
public static class EffectiveAperture
{
    /// <summary>Effective f-number of a lens at a given magnification.</summary>
    /// <param name="fNumber">Marked f-number N, which holds at infinity focus [1]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m that the lens itself makes [1]; ≥ 0. Leave out what a close-up lens adds.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter p [1]; &gt; 0. A symmetrical lens has 1.</param>
    /// <returns>The f-number that governs image illuminance, N·(1 + m/p) [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Greivenkamp2004", "working f-number with pupil magnification")]
    public static double EffectiveFNumber(double fNumber, double magnification, double pupilRatio = 1) =>
        Guard.Positive(fNumber) * BellowsFactor(magnification, pupilRatio);

    /// <summary>Light lost to magnification.</summary>
    /// <inheritdoc cref="EffectiveFNumber" path="/param[@name='magnification' or @name='pupilRatio']"/>
    /// <returns>Stops lost against infinity focus, 2·log₂(1 + m/p) [1]; ≥ 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Greivenkamp2004", "working f-number with pupil magnification")]
    public static double StopsLost(double magnification, double pupilRatio = 1) =>
        2 * Math.Log2(BellowsFactor(magnification, pupilRatio));

    /// <summary>Effective f-number of a lens mounted back to front.</summary>
    /// <param name="fNumber">f-number N marked on the lens, for its use the right way round [1]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m [1]; ≥ 0.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter p, the right way round [1]; &gt; 0.</param>
    /// <returns>The f-number that governs image illuminance, N·(m + 1/p) [1].</returns>
    /// <remarks>
    /// Reversed, the old exit pupil, p times as wide, faces the subject: the pupil ratio becomes 1/p and the f-number at infinity N/p,
    /// so N_e = (N/p)·(1 + m·p). The same follows from reading the lens backwards: its image-side cone at m is its object-side cone at 1/m.
    /// Where N already means focal length over the pupil that now faces the subject, use <see cref="EffectiveFNumber"/> with 1/p.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "Greivenkamp2004's working f-number with the pupils exchanged")]
    public static double EffectiveFNumberReversed(double fNumber, double magnification, double pupilRatio = 1) =>
        Guard.Positive(fNumber) * (Guard.NonNegative(magnification) + (1 / Guard.Positive(pupilRatio)));

    /// <summary>Effective f-number of a lens whose focal length shortens as it focuses closer.</summary>
    /// <param name="fNumber">Marked f-number N, which holds at infinity focus [1]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m [1]; ≥ 0.</param>
    /// <param name="focalLengthRatio">Focal length at that focus over that at infinity f′/f [1]; &gt; 0.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter p at that focus [1]; &gt; 0.</param>
    /// <returns>The f-number that governs image illuminance, N·(f′/f)·(1 + m/p) [1].</returns>
    /// <remarks>The entrance pupil is taken to keep its diameter f/N while the lens focuses.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "Greivenkamp2004's working f-number with a constant entrance pupil")]
    public static double EffectiveFNumberOfInternalFocus(
        double fNumber, double magnification, double focalLengthRatio, double pupilRatio = 1) =>
        EffectiveFNumber(fNumber, magnification, pupilRatio) * Guard.Positive(focalLengthRatio);

    /// <summary>Effective f-number behind a teleconverter.</summary>
    /// <param name="fNumber">Marked f-number N of the lens before the converter [1]; &gt; 0.</param>
    /// <param name="lensMagnification">Magnification m₀ that lens makes without the converter [1]; ≥ 0.</param>
    /// <param name="factor">Factor of the converter k [1]; ≥ 1.</param>
    /// <param name="pupilRatio">Pupil ratio p₀ of the lens without the converter [1]; &gt; 0.</param>
    /// <returns>The f-number that governs image illuminance, k·N·(1 + m₀/p₀) [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("TeleConvertersPage", "1 and 2 stops for 1.4× and 2×")]
    public static double EffectiveFNumberBehindConverter(
        double fNumber, double lensMagnification, double factor, double pupilRatio = 1) =>
        EffectiveFNumber(fNumber, lensMagnification, pupilRatio) * Guard.Between(factor, 1, double.MaxValue);

    private static double BellowsFactor(double magnification, double pupilRatio) =>
        1 + (Guard.NonNegative(magnification) / Guard.Positive(pupilRatio));
}
