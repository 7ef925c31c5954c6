using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>What the sensor's pixels measure at the subject.</summary>
public static class PixelScale
{
    /// <summary>Distance between pixel centres on the sensor.</summary>
    /// <param name="sensorWidth">Width of the sensor [m]; &gt; 0.</param>
    /// <param name="pixelsWide">Pixels along that width [1]; ≥ 1.</param>
    /// <returns>Pixel pitch [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "width over number of pixels")]
    public static double PixelPitch(double sensorWidth, int pixelsWide) =>
        Guard.Positive(sensorWidth) / Guard.Positive(pixelsWide);

    /// <summary>Distance at the subject that one pixel spans.</summary>
    /// <param name="pixelPitch">Distance between pixel centres on the sensor [m]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <returns>Pitch over magnification [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "pixel pitch over magnification")]
    public static double AtSubject(double pixelPitch, double magnification) =>
        Guard.Positive(pixelPitch) / Guard.Positive(magnification);

    /// <summary>Finest detail that can be told apart at the subject while nothing moves.</summary>
    /// <param name="pixelPitch">Distance between pixel centres on the sensor [m]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <returns>The larger of two pixels and the separation of two points by Rayleigh's criterion, over magnification [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "the coarser of sampling and diffraction")]
    [Source("Rayleigh1879", "resolving power")]
    public static double FinestDetail(
        double pixelPitch, double magnification, double effectiveFNumber, double wavelength = Diffraction.GreenLight) =>
        Math.Max(2 * Guard.Positive(pixelPitch), Diffraction.RayleighSeparation(effectiveFNumber, wavelength))
        / Guard.Positive(magnification);

    /// <summary>Finest detail that smear leaves.</summary>
    /// <param name="still">Finest detail while nothing moves [m]; ≥ 0.</param>
    /// <param name="smear">Length of the smear at the subject [m]; ≥ 0.</param>
    /// <returns>√(still² + smear²) [m].</returns>
    /// <remarks>
    /// Two points smeared over a length L part once they lie L apart, so L is the detail that smear alone leaves; independent causes combine in
    /// quadrature, as defocus and diffraction do.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hansma1996", "root-square combination")]
    public static double DetailWithSmear(double still, double smear) => Blur.Combined(still, smear);
}
