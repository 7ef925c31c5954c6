using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.SetUps;

/// <summary>Warnings for an exposure.</summary>
internal static class ExposureWarnings
{
    // Light from below against that from above from which legs and hairs are eaten (common practice, no source).
    private static readonly Stops EatsLegs = new(1);

    // Light of the sheet behind against that on the subject from which edges are eaten (common practice, no source).
    private static readonly Stops EatsEdges = new(1);

    // Round-off decides nothing.
    private const double Same = 1e-6;

    /// <summary>What there is to warn of.</summary>
    /// <param name="uplight">Light on the subject's underside against the lights above; none where there is none to compare.</param>
    /// <param name="spill">Light of the sheet behind on the subject's edges; none where there is none to compare.</param>
    public static IEnumerable<ExposureWarning> Of(Stops? uplight, EdgeSpillPlan? spill)
    {
        if (uplight is { } glow && glow.Value >= EatsLegs.Value - Same)
        {
            yield return new ExposureWarning.EatsLegs(glow, EatsLegs);
        }

        if (spill?.Strongest is { } edge && edge.AgainstKey.Value >= EatsEdges.Value - Same)
        {
            yield return new ExposureWarning.EatsEdges(edge, EatsEdges);
        }
    }
}
