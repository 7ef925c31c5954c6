using StudioKit.Field.Log.Release;
using D = StudioKit.Field.Log.Archive.DarwinCoreTerms;

namespace StudioKit.Field.Log.Archive;

/// <summary>Frames as rows of the simple multimedia extension, and back.</summary>
internal static class MultimediaTable
{
    /// <summary>Short names of the columns behind the first, which joins the core.</summary>
    public static readonly string[] Columns = ["identifier", "type", "format", "created", "title", "creator", "license"];

    public static ArchiveTable Of(LogRelease release) => new(
        "multimedia.csv",
        D.Multimedia,
        [D.DarwinCore + "occurrenceID", .. Columns.Select(term => D.DublinCore + term)],
        from session in release.Sessions
        from subject in session.Subjects
        from frame in subject.Frames
        select (IReadOnlyList<string>)[subject.PublishedId, .. Columns.Select(term => frame.Record[term])]);

    public static FieldFrame Frame(ArchiveRow row)
    {
        row.Only("occurrenceID", row.Id);
        row.Only("type", "StillImage");
        var address = row.Needed("identifier");
        return new FieldFrame
        {
            SubjectId = row.Id,
            FileName = address[(address.LastIndexOf('/') + 1)..],
            Taken = row.MaybeDate("created"),
            Caption = row["title"],
            Creator = row["creator"],
            Licence = row["license"],
        };
    }
}
