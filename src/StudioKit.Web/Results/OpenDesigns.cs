namespace StudioKit.Web.Results;

/// <summary>What a kit leaves open, and what its designs can be compared by.</summary>
/// <param name="Obstacle">Why nothing can be explored; empty where something can.</param>
/// <param name="Faults">What is wrong with what the kit leaves open.</param>
public sealed record OpenDesigns(string Obstacle, IReadOnlyList<Fault> Faults)
{
    /// <summary>Whether it was read to the end.</summary>
    public bool IsDone { get; init; } = true;

    /// <summary>How much is open, and whether the kit says so, in sentences.</summary>
    public string Said { get; init; } = "";

    /// <summary>What is open: its name, how the kit settles it as it is written, and other ways to settle it.</summary>
    public IReadOnlyList<StatePair> Choices { get; init; } = [];

    /// <summary>Every measure.</summary>
    public IReadOnlyList<DesignMeasureLine> Measures { get; init; } = [];

    /// <summary>The kit's own limits, as they are written.</summary>
    public IReadOnlyList<string> Limits { get; init; } = [];
}
