using D = StudioKit.Field.Log.DarwinCoreTerms;

namespace StudioKit.Field.Log;

/// <summary>Frames as rows of the simple multimedia extension, and back.</summary>
internal static class MultimediaTable
{
    private static readonly string[] Terms =
    [
        D.DarwinCore + "occurrenceID", D.DublinCore + "identifier", D.DublinCore + "type", D.DublinCore + "format", D.DublinCore + "created",
        D.DublinCore + "title", D.DublinCore + "creator", D.DublinCore + "license",
    ];

    /// <summary>Frames, each identified by its address: the folder that the pictures will be found in, and the file name.</summary>
    public static ArchiveTable Of(LogSnapshot log, string pictureFolder) => new(
        "multimedia.csv",
        D.Multimedia,
        Terms,
        [
            .. log.Frames.Select(frame => new[]
            {
                frame.SubjectId, pictureFolder + frame.FileName, "StillImage", MediaType(frame.FileName),
                frame.Taken is { } taken ? OccurrenceTable.Text(taken) : "", frame.Caption, frame.Creator, frame.Licence,
            }),
        ]);

    public static FieldFrame Frame(ArchiveRow row, string subjectId) => new()
    {
        SubjectId = subjectId,
        FileName = row["identifier"][(row["identifier"].LastIndexOf('/') + 1)..],
        Taken = row.MaybeMoment("created"),
        Caption = row["title"],
        Creator = row["creator"],
        Licence = row["license"],
    };

    private static string MediaType(string fileName) => Path.GetExtension(fileName).ToUpperInvariant() switch
    {
        ".JPG" or ".JPEG" => "image/jpeg",
        ".PNG" => "image/png",
        ".TIF" or ".TIFF" => "image/tiff",
        _ => "",
    };
}
