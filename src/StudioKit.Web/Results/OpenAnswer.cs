namespace StudioKit.Web.Results;

/// <summary>A file as text, or why it is none.</summary>
/// <param name="Text">The text as it was written; null where the file cannot be a kit's.</param>
/// <param name="Problem">What is wrong, and what would be accepted; empty where nothing is.</param>
public sealed record OpenAnswer(string? Text, string Problem)
{
    /// <summary>What it is.</summary>
    public OpenedKind Kind { get; init; }
}
