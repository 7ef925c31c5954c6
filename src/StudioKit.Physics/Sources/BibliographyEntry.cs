namespace StudioKit.Physics.Sources;

/// <summary>One source that calculations cite.</summary>
/// <param name="Key">The name by which <see cref="SourceAttribute"/> cites it.</param>
/// <param name="Authors">Authors or standards body.</param>
/// <param name="Title">Title, with edition.</param>
/// <param name="Publisher">Publisher, journal or standards body.</param>
/// <param name="Year">Year of the edition.</param>
/// <param name="Standing">What was seen of it: <c>read</c>, <c>excerpt</c>, <c>secondary</c>, <c>from memory</c> or <c>practice</c>.</param>
public sealed record BibliographyEntry(
    string Key, string Authors, string Title, string Publisher, string Year, string Standing)
{
    /// <summary>The entry as one line for a sheet.</summary>
    public string Citation =>
        string.Join(", ", new[] { Authors, Title, Publisher, Year }.Where(part => part.Length > 0));
}
