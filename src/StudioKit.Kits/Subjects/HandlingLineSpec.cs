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
}
