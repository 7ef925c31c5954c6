namespace StudioKit.Web.Results;

/// <summary>A design that no other beats.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Code">What it is known by.</param>
/// <param name="Figures">One for each measure compared.</param>
/// <param name="Against">What it wins and gives up against the kit, in the measures compared.</param>
/// <param name="Changes">What differs from the kit.</param>
public sealed record FoundDesign(int Number, string Code, IReadOnlyList<string> Figures, string Against, string Changes)
{
    /// <summary>What it wins, compared or not.</summary>
    public IReadOnlyList<string> Wins { get; init; } = [];

    /// <summary>What it gives up, compared or not.</summary>
    public IReadOnlyList<string> GivesUp { get; init; } = [];

    /// <summary>Every measure that has a figure: of the kit first, then of the design.</summary>
    public IReadOnlyList<StatePair> AllFigures { get; init; } = [];

    /// <summary>What is known of the designs beside it.</summary>
    public string Beside { get; init; } = "";
}
