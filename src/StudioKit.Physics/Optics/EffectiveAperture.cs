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

    private static double BellowsFactor(double magnification, double pupilRatio) =>
        1 + (Guard.NonNegative(magnification) / Guard.Positive(pupilRatio));
}
