using StudioKit.Kits.Subjects;

namespace StudioKit.Planning.Handling;

/// <summary>One line of a handling card.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Text">The advice.</param>
/// <param name="Source">Where it is published, or "common practice, no published source".</param>
/// <param name="Published">Whether it has a published source.</param>
public sealed record HandlingAdvice(HandlingTopic Topic, string Text, string Source, bool Published)
{
    /// <summary>What is disinfected with; none where the line names no agent.</summary>
    public Disinfectant? Disinfectant { get; init; }
}
