using StudioKit.Field.Analysis;
using StudioKit.Planning.Advising;

namespace StudioKit.Field.Advice;

/// <summary>One test frame with what it comes to and what to turn.</summary>
/// <param name="Frame">The frame.</param>
/// <param name="Finding">What it comes to.</param>
public sealed record FrameReport(FrameAnalysis Frame, FrameFinding Finding)
{
    /// <summary>What to turn where no kit tells of the flash; none where a plan advises, or where nothing is known.</summary>
    public WhiteAdvice? Advice { get; init; }

    /// <summary>What a plan makes of it; none without a kit.</summary>
    public FrameAdvice? Planned { get; init; }

    /// <summary>Where it was not taken as the plan says.</summary>
    public IReadOnlyList<string> Differences { get; init; } = [];
}
