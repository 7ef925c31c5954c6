using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>Where the principal planes and pupils of a lens lie that is long for its focal length, as a retrofocus lens is, when nobody has measured them.</summary>
/// <remarks>
/// A lens whose front glass stands more than two focal lengths from the sensor carries a diverging group in front: its principal planes lie apart,
/// and its exit pupil is larger than its entrance pupil. Straight lines through thirteen published prescriptions, traced close to the axis.
/// </remarks>
public static class WideAngleForm
{
    // The longest of the prescriptions stands 5.9 focal lengths from the sensor; nothing is known beyond.
    private const double LongestKnown = 4;
    private const double SeparationSlope = 0.72;
    private const double PupilSlope = 0.6;

    /// <summary>One standard deviation of closest focus, as a share of it [1]: makers print it to the centimetre.</summary>
    public const double ClosestFocusUncertainty = 0.01;

    /// <summary>One standard deviation of the separation of the principal planes, in focal lengths [1].</summary>
    public const double SeparationUncertainty = 0.25;

    /// <summary>One standard deviation of the pupil ratio, as a share of it [1].</summary>
    public const double PupilRatioUncertainty = 0.25;

    /// <summary>How much longer than two focal lengths a lens stands before the sensor.</summary>
    /// <param name="focalLength">Focal length f [m]; &gt; 0.</param>
    /// <param name="frontGlassToSensor">Front glass to sensor at infinity focus T [m]; &gt; 0.</param>
    /// <returns>s = T/f − 2 [1]; 0 for shorter lenses, 4 at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("LensPrescriptions", "front glass to sensor against focal length")]
    public static double Excess(double focalLength, double frontGlassToSensor) =>
        Math.Clamp((Guard.Positive(frontGlassToSensor) / Guard.Positive(focalLength)) - 2, 0, LongestKnown);

    /// <summary>The same, told by principal planes that are known to lie apart.</summary>
    /// <param name="focalLength">Focal length f [m]; &gt; 0.</param>
    /// <param name="separation">Separation of the principal planes i [m]; finite.</param>
    /// <returns>s = i/(0.72·f) [1]; 0 to 4.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("LensPrescriptions", "separation of the principal planes")]
    public static double ExcessOfSeparation(double focalLength, double separation) =>
        Math.Clamp(Guard.Finite(separation) / (SeparationSlope * Guard.Positive(focalLength)), 0, LongestKnown);

    /// <summary>Separation of the principal planes, rear behind front.</summary>
    /// <param name="focalLength">Focal length f [m]; &gt; 0.</param>
    /// <param name="excess">Excess s [1]; ≥ 0.</param>
    /// <returns>i = 0.72·s·f [m], give or take a quarter of f.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("LensPrescriptions", "separation of the principal planes")]
    public static double Separation(double focalLength, double excess) =>
        SeparationSlope * Guard.NonNegative(excess) * Guard.Positive(focalLength);

    /// <summary>Exit over entrance pupil diameter.</summary>
    /// <param name="excess">Excess s [1]; ≥ 0.</param>
    /// <returns>p = 1 + 0.6·s [1], give or take a quarter of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The excess is outside its range, or not finite.</exception>
    [Source("LensPrescriptions", "pupils")]
    public static double PupilRatio(double excess) => 1 + (PupilSlope * Guard.NonNegative(excess));
}
