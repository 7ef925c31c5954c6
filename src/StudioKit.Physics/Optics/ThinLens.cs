using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>Where subject and image lie for a lens of one focal length, counted from its principal planes.</summary>
public static class ThinLens
{
    /// <summary>Distance from the front principal plane to the subject.</summary>
    /// <param name="focalLength">Focal length f [m]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m, without sign [1]; &gt; 0.</param>
    /// <returns>Object distance u = f·(1 + 1/m) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("GerrardBurch1975", "thin lens; 1/f = 1/u + 1/v with m = v/u")]
    public static double ObjectDistance(double focalLength, double magnification) =>
        Guard.Positive(focalLength) * (1 + (1 / Guard.Positive(magnification)));

    /// <summary>Distance from subject to sensor.</summary>
    /// <param name="focalLength">Focal length f at that focus [m]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m, without sign [1]; &gt; 0.</param>
    /// <param name="hiatus">Separation of the principal planes i [m]; may be negative.</param>
    /// <returns>Distance D = f·(2 + m + 1/m) + i [m]; least at m = 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("ExtensionTubes", "worked 300 mm example; D = u + v + i")]
    public static double SubjectToSensor(double focalLength, double magnification, double hiatus = 0) =>
        (Guard.Positive(focalLength) * (2 + Guard.Positive(magnification) + (1 / magnification))) + Guard.Finite(hiatus);

    /// <summary>Focal length that a lens must have at a known focus: how an internal-focusing lens shortens.</summary>
    /// <param name="subjectToSensor">Distance from subject to sensor D [m]; &gt; i.</param>
    /// <param name="magnification">Magnification m there [1]; &gt; 0.</param>
    /// <param name="hiatus">Separation of the principal planes i [m]; 0 where it is unknown.</param>
    /// <returns>Focal length f′ = (D − i)/(2 + m + 1/m) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("ExtensionTubes", "worked 300 mm example, solved for f")]
    public static double FocalLengthAtFocus(double subjectToSensor, double magnification, double hiatus = 0) =>
        Guard.Positive(Guard.Finite(subjectToSensor) - Guard.Finite(hiatus), nameof(subjectToSensor))
        / (2 + Guard.Positive(magnification) + (1 / magnification));
}
