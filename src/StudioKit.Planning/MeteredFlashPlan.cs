using StudioKit.Physics.Exposure;

namespace StudioKit.Planning;

/// <summary>What to dial where the camera meters a flash instead of its power being set by hand.</summary>
/// <param name="Compensation">Flash compensation.</param>
/// <param name="SubjectShare">Share of what the meter looks at that the subject is taken to cover [1].</param>
/// <param name="SubjectReflectance">Its reflectance [1].</param>
/// <param name="BackgroundReflectance">Reflectance of what is behind it [1].</param>
/// <param name="BackgroundLevel">Light of the flash on that, against correct exposure.</param>
public sealed record MeteredFlashPlan(Stops Compensation, double SubjectShare, double SubjectReflectance, double BackgroundReflectance, Stops BackgroundLevel)
{
    // As far as cameras let it be dialled (common practice, no source) [stops].
    private const double Furthest = 3;

    /// <summary>Whether cameras let it be dialled; where not, the power is set by hand.</summary>
    public bool CanBeDialled => Math.Abs(Compensation.Value) <= Furthest + (1.0 / 6);
}
