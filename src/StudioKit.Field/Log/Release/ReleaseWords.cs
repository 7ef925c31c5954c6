namespace StudioKit.Field.Log.Release;

/// <summary>The everyday words that a user releases fields by.</summary>
public static class ReleaseWords
{
    private static readonly (string Word, string[] Terms)[] Known =
    [
        ("name", ["fieldNumber"]),
        ("locality", ["locality"]),
        ("elevation", ["minimumElevationInMeters", "maximumElevationInMeters"]),
        ("habitat", ["habitat"]),
        ("protocol", ["samplingProtocol"]),
        ("remarks", ["eventRemarks", "occurrenceRemarks"]),
        ("behaviour", ["behavior"]),
        ("times", ["eventDate", "created", SubjectFacts.HoldStart, SubjectFacts.HoldEnd]),
        ("people", ["recordedBy", "identifiedBy", "creator"]),
        ("identification", ["scientificName", "identificationQualifier", "vernacularName", "taxonRank", "sex", "lifeStage"]),
        ("captions", ["title"]),
        ("licence", ["license"]),
        ("pictures", ["identifier"]),
        ("framing", [FrameFacts.Lens, FrameFacts.Framing, FrameFacts.SetUp]),
        ("identifiers", ["eventID", "occurrenceID", "measurementID"]),
        ("measurements", RecordedFields.MeasurementTerms),
    ];

    /// <summary>All words, in the order of the records.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Known.Select(known => known.Word)];

    /// <summary>The word that releases a term; none where no word does.</summary>
    /// <param name="term">Short name of the term.</param>
    public static string? For(string term) => Known.FirstOrDefault(known => known.Terms.Contains(term, StringComparer.Ordinal)).Word;

    /// <summary>Whether a word releases fields of sessions alone, which their subjects share.</summary>
    /// <param name="word">The word.</param>
    public static bool IsOfSession(string word) => word is "name" or "locality" or "elevation" or "habitat" or "protocol";

    /// <summary>Reads what a user wrote.</summary>
    /// <param name="text">A word, for all records, or a word, an equals sign and the identifier of a session or subject.</param>
    /// <returns>What is released, or why that is not understood.</returns>
    public static FieldResult<IReadOnlyList<FieldPermission>> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (word, record) = text.Split('=', 2) is [var before, var after] ? (before.Trim(), after.Trim()) : (text.Trim(), "");
        var terms = Known.FirstOrDefault(known => known.Word == word).Terms;
        return terms is null
            ? new FieldDiagnostic("FLD484", $"--release {text}", $"'{word}' names no field that can be released.", $"Write one of: {string.Join(", ", All)}.")
            : FieldResult<IReadOnlyList<FieldPermission>>.Sound([.. terms.Select(term => new FieldPermission(term, record))], []);
    }
}
