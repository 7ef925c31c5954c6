namespace StudioKit.Field.Log.Archive;

/// <summary>Names of the terms that the log is exported in.</summary>
internal static class DarwinCoreTerms
{
    public const string DarwinCore = "http://rs.tdwg.org/dwc/terms/";
    public const string DublinCore = "http://purl.org/dc/terms/";
    public const string Occurrence = DarwinCore + "Occurrence";
    public const string MeasurementOrFact = DarwinCore + "MeasurementOrFact";
    public const string Multimedia = "http://rs.gbif.org/terms/1.0/Multimedia";

    /// <summary>Full names of terms.</summary>
    public static IReadOnlySet<string> Of(string standard, IEnumerable<string> terms) =>
        terms.Select(term => standard + term).Append(DarwinCore + "occurrenceID").ToHashSet(StringComparer.Ordinal);
}
