using StudioKit.Physics.Exposure.Budgets;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Level of a flash-lit matt subject against its correct exposure.</summary>
/// <remarks>
/// H = q·ρ·Q_E/(π·N_e²) against a mid-tone 2.97 stops under 78/S, the level of standard output sensitivity. The guide-number rule
/// with C = 250 puts the same tone
/// 0.09 stop lower; set the mid-tone to 3.07 stops under to follow it.
/// </remarks>
public static class SubjectExposure
{
    private static readonly double LambertianSurface = -Math.Log2(Math.PI);

    /// <summary>The level at the flash's own power.</summary>
    /// <param name="subject">Flash, subject and camera.</param>
    /// <returns>Stops above correct exposure, negative under it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 10/S")]
    public static Stops Level(SubjectExposureCase subject) => new(AtFullPower(subject) - subject.Flash.Power.StopsBelowFull);

    /// <summary>The same, line by line.</summary>
    /// <param name="subject">Flash, subject and camera.</param>
    /// <returns>Lines that add up to the level against correct exposure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 10/S")]
    public static LightBudget Budget(SubjectExposureCase subject)
    {
        _ = AtFullPower(subject);
        var known = subject.Uncertainty;
        return new LightBudget(
        [
            .. FlashTerms.Lines(subject.Flash, known),
            BudgetLine.Of(
                "Reflectance", Math.Log2(subject.Reflectance), $"{subject.Reflectance:P0} rendered as mid-tone",
                "Derived", "exitance = ρ·E"),
            BudgetLine.Of(
                "Matt surface", LambertianSurface, $"spread over the half-space, 1/π",
                "CommonPractice", "CIE vocabulary: Lambertian surface, M = π·L"),
            .. CameraTerms.Lines(subject.Camera, known),
            BudgetLine.Of(
                "Mid-tone", subject.Camera.MidToneUnderClipping.Value, $"its place under saturation",
                "Iso12232", "78/S against 10/S", known.ClipPoint),
        ]);
    }

    /// <summary>Power of the flash for a wanted level, to the nearest click of its dial.</summary>
    /// <param name="subject">Flash, subject and camera; the flash's own power is not looked at.</param>
    /// <param name="target">Level wanted against correct exposure: 0 for a key light, negative for a fill.</param>
    /// <returns>The power setting and the level it gives, or the end of the dial that stands in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 10/S, solved for the power")]
    public static PowerSolution PowerFor(SubjectExposureCase subject, Stops target = default) =>
        PowerDial.Solve(AtFullPower(subject), target.Value, subject.Flash, PowerRounding.Nearest);

    /// <summary>Where a tone of another reflectance lies against the camera's clipping.</summary>
    /// <param name="subject">Flash, subject and camera.</param>
    /// <param name="reflectance">Reflectance of the tone ρ [1]; above 0, at most 1.</param>
    /// <returns>Stops above clipping, negative under it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reflectance is outside its range.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S")]
    public static Stops AgainstClipping(SubjectExposureCase subject, double reflectance)
    {
        var tone = Math.Log2(Guard.Between(Guard.Positive(reflectance), 0, 1) / subject.Reflectance);
        return Level(subject) + new Stops(tone) - subject.Camera.MidToneUnderClipping - subject.Camera.ClipPoint;
    }

    internal static double AtFullPower(SubjectExposureCase subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        var reflectance = Guard.Between(Guard.Positive(subject.Reflectance, nameof(subject.Reflectance)), 0, 1, nameof(subject.Reflectance));
        return FlashTerms.AtFullPower(subject.Flash) + Math.Log2(reflectance) + LambertianSurface
            + CameraTerms.AgainstSaturation(subject.Camera) + subject.Camera.MidToneUnderClipping.Value;
    }
}
