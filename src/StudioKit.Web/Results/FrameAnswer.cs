namespace StudioKit.Web.Results;

/// <summary>What a test frame comes to, and what to turn from the plan.</summary>
/// <param name="Standing">Whether the background is white all over.</param>
/// <param name="Verdict">The same as a sentence.</param>
/// <param name="Turns">What to turn, best first.</param>
/// <param name="Faults">Why nothing can be told; empty where something was.</param>
public sealed record FrameAnswer(Standing Standing, string Verdict, IReadOnlyList<string> Turns, IReadOnlyList<string> Faults)
{
    /// <summary>The figures, each with its name.</summary>
    public IReadOnlyList<FrameFigure> Figures { get; init; } = [];

    /// <summary>What to bear in mind.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Shares of the background by how far they lie under white.</summary>
    public IReadOnlyList<FrameFigure> Bands { get; init; } = [];

    /// <summary>What the map shows, as a sentence.</summary>
    public string Map { get; init; } = "";

    /// <summary>Darkest place of the background from the left and from the top, as shares of the frame; none where all is white.</summary>
    public Spot? Darkest { get; init; }
}
