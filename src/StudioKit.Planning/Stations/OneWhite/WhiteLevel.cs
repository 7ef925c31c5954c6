using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>A white margin against the one that all stations are to have.</summary>
/// <param name="Margin">Stops by which the darkest visible place lies over clipping.</param>
/// <param name="Uncertainty">Its standard uncertainty.</param>
/// <param name="Deviation">Margin less the common one.</param>
/// <param name="Probability">Probability that it lies within the tolerance of the common one [1].</param>
public sealed record WhiteLevel(Stops Margin, Stops Uncertainty, Stops Deviation, double Probability)
{
    /// <summary>Whether that decides that it is within, or outside.</summary>
    public ConformityDecision Decision => Conformity.Decide(Probability);

    /// <summary>A margin against the common one.</summary>
    /// <param name="margin">The margin.</param>
    /// <param name="uncertainty">Its standard uncertainty; 0 stops or more.</param>
    /// <param name="common">The common margin.</param>
    /// <param name="tolerance">How far from it is still one white; 0 stops or more.</param>
    public static WhiteLevel Of(Stops margin, Stops uncertainty, Stops common, Stops tolerance) =>
        new(margin, uncertainty, margin - common, Conformity.Probability(margin, common - tolerance, common + tolerance, uncertainty));
}
