using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.SetUps;

/// <summary>Warnings for an exposure.</summary>
internal static class ExposureWarnings
{
    // Light from below against that from above from which legs and hairs are eaten (common practice, no source).
    private static readonly Stops EatsLegs = new(1);

    // Round-off decides nothing.
    private const double Same = 1e-6;

    /// <summary>What there is to warn of.</summary>
    /// <param name="uplight">Light on the subject's underside against the lights above; none where there is none to compare.</param>
    public static IEnumerable<ExposureWarning> Of(Stops? uplight)
    {
        if (uplight is { } glow && glow.Value >= EatsLegs.Value - Same)
        {
            yield return new ExposureWarning.EatsLegs(glow, EatsLegs);
        }
    }
}
