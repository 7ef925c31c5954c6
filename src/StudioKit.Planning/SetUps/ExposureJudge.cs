using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps;

/// <summary>Whether an exposure works, works at the edge, or does not.</summary>
internal static class ExposureJudge
{
    // How far times may be off and the picture still be of use: hand and animal are known to about a factor of two (common practice, no source).
    private static readonly Stops EdgeOfTimes = new(1);

    // Round-off decides nothing.
    private const double Same = 1e-6;

    /// <summary>The verdict on an exposure.</summary>
    /// <param name="at">The set-up at its framing.</param>
    /// <param name="result">The exposure found.</param>
    /// <param name="uncertainty">One standard deviation of what the set-up aims at.</param>
    /// <param name="smear">Smear that takes detail away, and what still passes for sharp [pixels].</param>
    public static ExposureVerdict Of(SetUpAtFraming at, SetUpResult result, Stops uncertainty, (double Pixels, double Limit) smear)
    {
        ValueList<MissedLimit> missed = [.. result.Missed, .. Smeared(smear)];
        return at.Planner.Chances(at, result, uncertainty) with { Verdict = VerdictOf(missed, uncertainty), Missed = missed };
    }

    private static IEnumerable<MissedLimit> Smeared((double Pixels, double Limit) smear) =>
        smear.Pixels > smear.Limit * (1 + Same) ? [new MissedLimit.Smears(smear.Pixels, smear.Limit)] : [];

    private static Verdict VerdictOf(ValueList<MissedLimit> missed, Stops uncertainty) =>
        missed.Count == 0 ? Verdict.Works
        : missed.All(limit => limit.By is { } by && by.Value <= EdgeOf(limit, uncertainty).Value + Same) ? Verdict.AtTheEdge
        : Verdict.DoesNotWork;

    private static Stops EdgeOf(MissedLimit limit, Stops uncertainty) =>
        limit is MissedLimit.RecyclesSlowly or MissedLimit.BurnsLong or MissedLimit.Smears ? EdgeOfTimes : uncertainty;
}
