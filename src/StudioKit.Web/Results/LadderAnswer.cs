namespace StudioKit.Web.Results;

/// <summary>What a power ladder measures.</summary>
/// <param name="Verdict">How white the panel is at the planned power, as a sentence.</param>
/// <param name="Turns">What to turn from the plan, best first.</param>
/// <param name="Against">The measured map against the plan's, as a sentence.</param>
/// <param name="Faults">Why nothing can be told; empty where something was.</param>
public sealed record LadderAnswer(string Verdict, IReadOnlyList<string> Turns, string Against, IReadOnlyList<string> Faults)
{
    /// <summary>Cells of the map across.</summary>
    public int Columns { get; init; }

    /// <summary>Cells of the map down.</summary>
    public int Rows { get; init; }

    /// <summary>The cells, row by row from the top left.</summary>
    public IReadOnlyList<LadderSpot> Cells { get; init; } = [];

    /// <summary>What to bear in mind.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>The correction that follows from it, as the text of its file; empty where none does.</summary>
    public string Correction { get; init; } = "";

    /// <summary>Name of the file that the command line looks for beside the kit.</summary>
    public string CorrectionFile { get; init; } = "";

    /// <summary>The corrected figures, and which cards change by them; or why there is no correction.</summary>
    public IReadOnlyList<string> CorrectionLines { get; init; } = [];
}
