using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>The f-number at which defocus and diffraction together blur a deep subject least.</summary>
public static class BestAperture
{
    private const double MarksPerDoubling = 6;

    /// <summary>Effective f-number that is sharpest over a focus spread.</summary>
    /// <param name="focusSpread">Distance dv between the nearest and farthest sharp image [m]; ≥ 0.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <param name="airyShare">Share of the Airy disc counted as diffraction blur k [1]; &gt; 0.</param>
    /// <returns>N_e = √(dv/(2·k·2.44·λ)) [1]; with 2.44·λ = 1/750 mm that is √(375·dv/mm).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hansma1996", "table of focus spread and f-stop, which √(375·dv) reproduces")]
    public static double EffectiveFNumber(
        double focusSpread, double wavelength = Diffraction.GreenLight, double airyShare = 1) =>
        Math.Sqrt(Guard.NonNegative(focusSpread) / (2 * Guard.Positive(airyShare) * Diffraction.AiryDiscDiameter(1, wavelength)));

    /// <summary>Marked third-stop f-number that is sharpest over a subject's depth, within what the lens has.</summary>
    /// <param name="stack">The stack focused on the subject's middle, at any aperture.</param>
    /// <param name="marked">The f-number that the stack was computed at.</param>
    /// <param name="lens">The lens, for its widest and smallest aperture.</param>
    /// <param name="depth">Depth of the subject along the line of sight; ≥ 0 m.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <param name="airyShare">Share of the Airy disc counted as diffraction blur k [1]; &gt; 0.</param>
    /// <returns>The exact value of the marked f-number, 2^(k/6).</returns>
    /// <remarks>
    /// The optimum is found for the effective f-number and only then carried back to the ring: used on the ring directly it would be two stops
    /// too small at life size. Blur is symmetrical in stops about the optimum, so the nearest mark is the best one. dv = m²·depth.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite, or the lens's apertures are reversed.</exception>
    [Source("Hansma1996", "table of focus spread and f-stop, applied to the effective f-number")]
    public static FNumber Marked(
        OpticalStackResult stack,
        FNumber marked,
        LensOptics lens,
        Length depth,
        double wavelength = Diffraction.GreenLight,
        double airyShare = 1)
    {
        ArgumentNullException.ThrowIfNull(stack);
        ArgumentNullException.ThrowIfNull(lens);
        var m = stack.Magnification.Value;
        var spread = m * m * Guard.NonNegative(depth.Meters, nameof(depth));
        var bellows = stack.EffectiveFNumber.Value / Guard.Positive(marked.Value, nameof(marked));
        var best = EffectiveFNumber(spread, wavelength, airyShare) / bellows;
        var widest = Mark(lens.WidestAperture.Value);
        var smallest = Guard.Between(Mark(lens.SmallestAperture.Value), widest, double.MaxValue, nameof(lens));
        var mark = best > 0 ? Math.Clamp(Mark(best), widest, smallest) : widest;
        return new FNumber(Math.Pow(2, mark / MarksPerDoubling));
    }

    private static double Mark(double fNumber) => Math.Round(MarksPerDoubling * Math.Log2(fNumber));
}
