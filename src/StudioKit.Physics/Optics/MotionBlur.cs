using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>Smear from what moves while light reaches the sensor.</summary>
public static class MotionBlur
{
    /// <summary>Length of the smear on the sensor.</summary>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="speed">Speed across the line of sight v [m/s]; ≥ 0.</param>
    /// <param name="time">Time that light falls t [s]; ≥ 0.</param>
    /// <returns>Smear m·v·t [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "distance moved, times magnification")]
    public static double OnSensor(double magnification, double speed, double time) =>
        Guard.Positive(magnification) * Guard.NonNegative(speed) * Guard.NonNegative(time);

    /// <summary>Longest time that keeps the smear within a number of pixels.</summary>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="speed">Speed across the line of sight v [m/s]; &gt; 0.</param>
    /// <param name="pixelPitch">Distance between pixel centres [m]; &gt; 0.</param>
    /// <param name="pixels">Smear allowed, in pixels [1]; &gt; 0.</param>
    /// <returns>Time t = pixels·pitch/(m·v) [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "smear m·v·t solved for t")]
    public static double LongestTime(double magnification, double speed, double pixelPitch, double pixels) =>
        Guard.Positive(pixels) * Guard.Positive(pixelPitch) / (Guard.Positive(magnification) * Guard.Positive(speed));

    /// <summary>Smear of the flash-lit and of the ambient-lit picture, in pixels.</summary>
    /// <param name="motion">Speeds, times and the share of ambient light.</param>
    /// <returns>The smear of each cause, with the share of the light that it smears.</returns>
    /// <remarks>
    /// Subject and hand move independently, so their smears add in quadrature. Two pictures lie over one another: the second moment of their sum is
    /// the mean of their second moments weighted by light, so each smear counts by the root of its share.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    [Source("Derived", "smear m·v·t for each light; independent motions in quadrature")]
    public static MotionBlurResult InPixels(MotionBlurCase motion)
    {
        ArgumentNullException.ThrowIfNull(motion);
        var (subject, hand) = (motion.SubjectSpeed.MetersPerSecond, motion.HandSpeed.MetersPerSecond);
        var pitch = Guard.Positive(motion.PixelPitch.Meters, nameof(MotionBlurCase.PixelPitch));
        var ambientShare = Guard.Between(motion.AmbientShare, 0, 1, nameof(MotionBlurCase.AmbientShare));
        return new MotionBlurResult(
            Part(MotionBlurKind.Hand, hand, motion.Shutter.Seconds, ambientShare),
            Part(MotionBlurKind.Subject, subject, motion.Shutter.Seconds, ambientShare),
            Part(MotionBlurKind.Flash, Blur.Combined(subject, hand), motion.FlashDuration.Seconds, 1 - ambientShare));

        MotionBlurPart Part(MotionBlurKind kind, double speed, double seconds, double share) =>
            new(kind, OnSensor(motion.Magnification.Value, speed, seconds) / pitch, share);
    }
}
