using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Stops by which a white background lies above the sensor's clipping.</summary>
public static class WhiteMargin
{
    // Saturation exposure times speed, H_sat·S, of ISO 12232 [lx·s].
    private const double SaturationExposure = 78;

    // What is darker than this counts as black: a logarithm of nothing helps nobody.
    private const double Black = -30;

    /// <summary>Margin of a point from the luminance·time that it shows the camera.</summary>
    /// <param name="luminanceTime">Luminance times time Q_L [cd·s/m²]; ≥ 0.</param>
    /// <param name="exposure">What the camera is set to.</param>
    /// <returns>log₂(q·Q_L/N_e²/(78/S)) less clip point and filter [stops]; not under −30.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The luminance is negative or not finite, or q is not above zero.</exception>
    [Source("Derived", "H = q·Q_L/N_e² against H_sat = 78/S, both of ISO 12232")]
    public static Stops Of(double luminanceTime, CameraExposure exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        Guard.NonNegative(luminanceTime);
        return new Stops(Stop(luminanceTime * PerLuminanceTime(exposure)));
    }

    // Sensor exposure over clipping exposure, for one cd·s/m² [1].
    internal static double PerLuminanceTime(CameraExposure exposure)
    {
        var square = exposure.EffectiveFNumber.Value * exposure.EffectiveFNumber.Value;
        return Guard.Positive(exposure.LensFactor, nameof(exposure)) / square * exposure.Iso.Value / SaturationExposure
            / (exposure.ClipPoint.Ratio * exposure.FilterLoss.Ratio);
    }

    internal static double Stop(double ratio) => ratio > 0 ? Math.Max(Black, Math.Log2(ratio)) : Black;
}
