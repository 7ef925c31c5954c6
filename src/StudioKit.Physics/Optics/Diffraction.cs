using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>The blur that a round aperture makes because light is a wave.</summary>
public static class Diffraction
{
    /// <summary>Wavelength taken where none is given: green light, to which eye and sensor are most sensitive [m].</summary>
    public const double GreenLight = 550e-9;

    /// <summary>Diameter of the Airy disc on the sensor, to its first dark ring.</summary>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <returns>Diameter 2.44·λ·N_e [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("AiryDiskArticle", "size: first minimum at 1.22·λ/d")]
    public static double AiryDiscDiameter(double effectiveFNumber, double wavelength = GreenLight) =>
        2.44 * Guard.Positive(wavelength) * Guard.Positive(effectiveFNumber);

    /// <summary>Least distance on the sensor at which two points are seen as two, by Rayleigh's criterion.</summary>
    /// <inheritdoc cref="AiryDiscDiameter" path="/param"/>
    /// <returns>Separation 1.22·λ·N_e [m]: the middle of one Airy disc lies on the first dark ring of the other, half the disc's diameter away.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Rayleigh1879", "resolving power; with the round aperture's 1.22·λ/d")]
    public static double RayleighSeparation(double effectiveFNumber, double wavelength = GreenLight) =>
        AiryDiscDiameter(effectiveFNumber, wavelength) / 2;

    /// <summary>Spatial frequency on the sensor above which a perfect lens passes nothing.</summary>
    /// <inheritdoc cref="AiryDiscDiameter" path="/param"/>
    /// <returns>Cut-off frequency 1/(λ·N_e) [1/m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Goodman1968", "ch. 6: incoherent transfer function of a circular pupil")]
    public static double CutOffFrequency(double effectiveFNumber, double wavelength = GreenLight) =>
        1 / (Guard.Positive(wavelength) * Guard.Positive(effectiveFNumber));

    /// <summary>Contrast that a perfect lens in focus keeps at a spatial frequency on the sensor.</summary>
    /// <param name="frequency">Spatial frequency ν [1/m]; ≥ 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <returns>Modulation transfer (2/π)·(acos s − s·√(1 − s²)), s = ν·λ·N_e [1]; 0 above the cut-off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Goodman1968", "ch. 6: incoherent transfer function of a circular pupil")]
    public static double ModulationTransfer(double frequency, double effectiveFNumber, double wavelength = GreenLight)
    {
        var s = Guard.NonNegative(frequency) / CutOffFrequency(effectiveFNumber, wavelength);
        return s >= 1 ? 0 : 2 / Math.PI * (Math.Acos(s) - (s * Math.Sqrt(1 - (s * s))));
    }
}
