namespace StudioKit.Web.Results;

/// <summary>A plan as the page shows it.</summary>
/// <param name="Hash">Hash of the kit's content, as on every sheet; empty where it cannot be read.</param>
/// <param name="KitName">The kit's name; empty where it cannot be read.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Faults">Everything wrong with the text, in order of place.</param>
public sealed record PlanAnswer(string Hash, string KitName, VerdictLine Verdict, IReadOnlyList<Fault> Faults)
{
    /// <summary>Parts that the kit names and that are not on this device, by <c>KIND/NAME</c>; empty where all are.</summary>
    public IReadOnlyList<string> MissingParts { get; init; } = [];

    /// <summary>Measured corrections that it was made with, in words; empty where there are none.</summary>
    public string Corrections { get; init; } = "";

    /// <summary>The figures that a change is judged by.</summary>
    public IReadOnlyList<Measure> Measures { get; init; } = [];

    /// <summary>Every check, in the order of the work.</summary>
    public IReadOnlyList<CheckLine> Checks { get; init; } = [];

    /// <summary>The studio of each set-up on the panel.</summary>
    public IReadOnlyList<StudioPicture> Studios { get; init; } = [];

    /// <summary>Every starting exposure.</summary>
    public IReadOnlyList<CardFace> Cards { get; init; } = [];

    /// <summary>The kit's subjects.</summary>
    public IReadOnlyList<AnimalLine> Animals { get; init; } = [];
}
