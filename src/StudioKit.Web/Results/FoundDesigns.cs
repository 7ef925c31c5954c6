namespace StudioKit.Web.Results;

/// <summary>What a search for designs found.</summary>
/// <param name="Hash">Hash of the kit that it is about.</param>
/// <param name="Measures">What was compared.</param>
/// <param name="Kit">Figures of the kit as it is written, one for each measure compared.</param>
/// <param name="Designs">The designs that no other beats.</param>
/// <param name="Said">What came of it, in a sentence.</param>
public sealed record FoundDesigns(string Hash, IReadOnlyList<string> Measures, IReadOnlyList<string> Kit, IReadOnlyList<FoundDesign> Designs, string Said)
{
    /// <summary>What each choice does: its name, its options, and what a change of it alone does.</summary>
    public IReadOnlyList<StatePair> Effects { get; init; } = [];

    /// <summary>What was tried, and what is proven.</summary>
    public IReadOnlyList<string> Proof { get; init; } = [];

    /// <summary>The designs by the first two measures; none where one alone counts, or none is shown.</summary>
    public DesignPicture? Picture { get; init; }
}
