using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Metering;

/// <summary>Light at the sensor and where it clips, as ISO 12232 counts both.</summary>
public static class SensorExposure
{
    /// <summary>Usual lens factor q [1]: transmission 0.9, vignetting 0.98, 10° off axis.</summary>
    [Source("Iso12232", "q = 0.6516, used as 0.65")]
    public const double UsualLensFactor = 0.65;

    /// <summary>Saturation-based speed times saturation exposure [lx·s].</summary>
    [Source("Iso12232", "saturation-based speed, S = 78/H")]
    public const double SaturationConstant = 78;

    /// <summary>Stops from a correctly exposed mid-tone of 18 % up to clipping [1].</summary>
    /// <remarks>
    /// log₂(78/10) is 2.963 and the standard's 41 % headroom over 18 % gives 2.974; definitions spread from 2.47 to 3.26. A clip
    /// test with the camera
    /// replaces it.
    /// </remarks>
    [Source("Iso12232", "78/S against 10/S, and 18 % with 41 % headroom")]
    public const double MidToneUnderClipping = 2.97;

    /// <summary>Lens factor from its parts.</summary>
    /// <param name="transmittance">Transmittance of the lens [1]; above 0, at most 1.</param>
    /// <param name="vignetting">Vignetting factor f_v [1]; above 0, at most 1.</param>
    /// <param name="fieldAngle">Angle from the optical axis [rad]; 0 to under π/2.</param>
    /// <returns>q = (π/4)·T·f_v·cos⁴θ [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Iso12232", "lens factor q")]
    public static double LensFactor(double transmittance, double vignetting, double fieldAngle)
    {
        Guard.Between(Guard.Positive(transmittance), 0, 1);
        Guard.Between(Guard.Positive(vignetting), 0, 1);
        Guard.Between(fieldAngle, 0, 1.57);

        return Math.PI / 4 * transmittance * vignetting * Math.Pow(Math.Cos(fieldAngle), 4);
    }

    /// <summary>Exposure at which the sensor clips.</summary>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <param name="clipPoint">How far the camera's own clipping lies above 78/S.</param>
    /// <returns>78/S·2^offset [lx·s].</returns>
    [Source("Iso12232", "saturation-based speed, S = 78/H")]
    public static double SaturationExposure(IsoSpeed iso, Stops clipPoint = default) =>
        SaturationConstant / iso.Value * clipPoint.Ratio;
}
