using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Whether a background comes out white, and how likely.</summary>
/// <param name="Whiteness">The verdict.</param>
/// <param name="Probability">Probability that its darkest point lies over clipping [1]; 0 to 1.</param>
public sealed record WhitenessVerdict(Whiteness Whiteness, double Probability)
{
    // Under these odds a margin that meets its target is still a gamble, because it is hardly known (our own choice).
    private const double LeastOdds = 2.0 / 3;

    /// <summary>Judges a white margin.</summary>
    /// <param name="margin">White margin at the darkest point.</param>
    /// <param name="target">White margin wanted; 0 stops or more.</param>
    /// <param name="uncertainty">One standard deviation; 0 stops or more.</param>
    /// <returns>White where the margin meets its target and clips at two to one or better; not white under clipping by over one standard deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The target or the uncertainty is negative.</exception>
    [Source("Gum", "6.2.1 and G.1.2: an interval under a normal distribution")]
    public static WhitenessVerdict Of(Stops margin, Stops target, Stops uncertainty)
    {
        var wanted = Guard.NonNegative(target.Value, nameof(target));
        var probability = Likelihood.Above(margin, default, uncertainty);
        return new WhitenessVerdict(
            margin.Value >= wanted && probability >= LeastOdds ? Whiteness.White
            : margin.Value < -uncertainty.Value ? Whiteness.NotWhite
            : Whiteness.AtTheEdge,
            probability);
    }
}
