using StudioKit.Field.Log.Release;
using D = StudioKit.Field.Log.Archive.DarwinCoreTerms;

namespace StudioKit.Field.Log.Archive;

/// <summary>Measurements, holds and camera settings as rows of the measurement-or-fact extension, and back.</summary>
/// <remarks>
/// Holds and settings have no terms of their own, so each is a fact whose identifier is that of the subject or frame with the fact's name behind
/// a number sign. That is also how they are told from measurements when an archive is read.
/// </remarks>
internal static class MeasurementTable
{
    private const char Mark = '#';
    private const string Yes = "true";
    private const string No = "false";
    private const string Value = "measurementValue";

    /// <summary>Short names of the columns behind the first, which joins the core.</summary>
    public static readonly string[] Columns =
        ["measurementID", "measurementType", "measurementValue", "measurementUnit", "measurementAccuracy", "measurementMethod", "measurementRemarks"];

    private static readonly (string Type, string Unit, Func<FieldSubject, ArchiveRow, FieldSubject> Set)[] OfSubject =
    [
        (SubjectFacts.HoldStart, "", (s, row) => s with { HoldStart = row.Moment(Value) }),
        (SubjectFacts.HoldEnd, "", (s, row) => s with { HoldEnd = row.Moment(Value) }),
        (SubjectFacts.HoldLimit, "s", (s, row) => s with { HoldLimit = Seconds(row) }),
        (SubjectFacts.Released, "", (s, row) => s with { Released = row[Value] switch { Yes => true, No => false, _ => throw row.Wrong(Value, "answer", $"{Yes} or {No}") } }),
        (SubjectFacts.Sensitivity, "", (s, row) => s with { Sensitivity = SensitivityOf(row) }),
    ];

    private static readonly (string Type, string Unit, Func<FieldFrame, ArchiveRow, FieldFrame> Set)[] OfFrame =
    [
        (FrameFacts.ExposureTime, "s", (f, row) => f with { ExposureTime = row.Number(Value) }),
        (FrameFacts.FNumber, "", (f, row) => f with { FNumber = row.Number(Value) }),
        (FrameFacts.IsoSpeed, "", (f, row) => f with { Iso = row.Number(Value) }),
        (FrameFacts.FocalLength, "mm", (f, row) => f with { FocalLength = row.Number(Value) }),
        (FrameFacts.PixelSize, "µm", (f, row) => f with { MicrometresPerPixel = row.Number(Value) }),
        (FrameFacts.Lens, "", (f, row) => f with { Lens = row[Value] }),
        (FrameFacts.Framing, "", (f, row) => f with { Framing = row[Value] }),
        (FrameFacts.SetUp, "", (f, row) => f with { SetUp = row[Value] }),
    ];

    public static ArchiveTable Of(LogRelease release)
    {
        var subjects = release.Sessions.SelectMany(session => session.Subjects);
        return new(
            "measurementorfact.csv",
            D.MeasurementOrFact,
            [D.DarwinCore + "occurrenceID", .. Columns.Select(name => D.DarwinCore + name)],
            subjects.SelectMany(MeasurementRows)
                .Concat(subjects.SelectMany(subject => FactRows(subject, subject.Facts, OfSubject.Select(fact => (fact.Type, fact.Unit)), "")))
                .Concat(
                    from subject in subjects
                    from frame in subject.Frames
                    from row in FactRows(subject, frame.Facts, OfFrame.Select(fact => (fact.Type, fact.Unit)), $"of picture {frame.FileName}")
                    select row));
    }

    public static void Read(ArchiveRow row, ArchiveReading reading)
    {
        row.Only("occurrenceID", row.Id);
        var id = row.Needed("measurementID");
        var mark = id.LastIndexOf(Mark);
        var (owner, fact) = mark < 0 ? (id, "") : (id[..mark], id[(mark + 1)..]);
        if (owner == row.Id && Array.Find(OfSubject, candidate => candidate.Type == fact) is { Set: { } setSubject } kind)
        {
            row.Only("measurementUnit", kind.Unit);
            reading.Subjects[row.Id] = setSubject(reading.Subjects[row.Id], row);
        }
        else if (reading.Frames.TryGetValue(owner, out var frame) && Array.Find(OfFrame, candidate => candidate.Type == fact) is { Set: { } setFrame } setting)
        {
            row.Only("measurementUnit", setting.Unit);
            reading.Frames[owner] = setFrame(frame, row);
        }
        else
        {
            reading.Add(Measurement(row), row);
        }
    }

    // Remarks of a measurement are written for a picture's settings alone.
    private static FieldMeasurement Measurement(ArchiveRow row)
    {
        row.Only("measurementRemarks", "");
        return new FieldMeasurement
        {
            Id = row["measurementID"],
            SubjectId = row.Id,
            Type = row.Needed("measurementType"),
            Value = row.Needed(Value),
            Unit = row["measurementUnit"],
            Accuracy = row["measurementAccuracy"],
            Method = row["measurementMethod"],
        };
    }

    // One whose type or value is withheld says nothing.
    private static IEnumerable<IReadOnlyList<string>> MeasurementRows(SubjectRelease subject) =>
        from measurement in subject.Measurements
        where measurement["measurementType"].Length > 0 && measurement["measurementValue"].Length > 0
        select (IReadOnlyList<string>)[subject.PublishedId, .. Columns.Select(term => measurement[term])];

    private static IEnumerable<IReadOnlyList<string>> FactRows(
        SubjectRelease subject, ReleasedRecord facts, IEnumerable<(string Type, string Unit)> kinds, string remarks) =>
        from kind in kinds
        let value = facts[kind.Type]
        where value.Length > 0
        select (IReadOnlyList<string>)
            [subject.PublishedId, $"{facts.PublishedId}{Mark}{kind.Type}", kind.Type, value, kind.Unit, "", "", remarks];

    // A number is no name, though it parses as one.
    private static PlaceSensitivity SensitivityOf(ArchiveRow row) =>
        Enum.TryParse<PlaceSensitivity>(row[Value], out var value) && Enum.IsDefined(value) && value.ToString() == row[Value]
            ? value
            : throw row.Wrong(Value, "sensitivity", string.Join(", ", Enum.GetNames<PlaceSensitivity>()));

    private static TimeSpan Seconds(ArchiveRow row) => row.Number(Value) is { } seconds and >= 0 and < 1e9 ? TimeSpan.FromSeconds(seconds) : throw row.Wrong(Value, "time in seconds", "600");
}
