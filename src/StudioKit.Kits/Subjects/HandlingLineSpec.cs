using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>One piece of advice on handling.</summary>
public sealed record HandlingLineSpec
{
    /// <summary>What it is about.</summary>
    public required HandlingTopic Topic { get; init; }

    /// <summary>The advice, a sentence.</summary>
    public required string Text { get; init; }

    /// <summary>Key of the source in the bibliography, or the source in words.</summary>
    public string Source { get; init; } = "CommonPractice";

    /// <summary>What the line disinfects with; none where it names no agent, or leaves it to the authority of the place.</summary>
    public DisinfectantAgent? Agent { get; init; }

    /// <summary>How strong the agent is, a share of the whole [1]; above 0, at most 1.</summary>
    public double? Strength { get; init; }

    /// <summary>How long the agent must stay wet at the least.</summary>
    public Duration? ContactTime { get; init; }
}
