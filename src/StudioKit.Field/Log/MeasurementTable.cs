using System.Globalization;
using D = StudioKit.Field.Log.DarwinCoreTerms;

namespace StudioKit.Field.Log;

/// <summary>Measurements, holds and camera settings as rows of the measurement-or-fact extension, and back.</summary>
/// <remarks>
/// Holds and settings have no terms of their own, so each is a fact whose identifier is that of the subject or frame with the fact's name behind
/// a number sign. That is also how they are told from measurements when an archive is read.
/// </remarks>
internal static class MeasurementTable
{
    private const char Mark = '#';
    private const string Yes = "true";

    private static readonly string[] Names =
        ["measurementID", "measurementType", "measurementValue", "measurementUnit", "measurementAccuracy", "measurementMethod", "measurementRemarks"];

    private static readonly (string Type, string Unit, Func<FieldSubject, string?> Get, Func<FieldSubject, string, FieldSubject> Set)[] SubjectFacts =
    [
        ("hold start", "", s => Text(s.HoldStart), (s, value) => s with { HoldStart = ArchiveRow.Moment(value) }),
        ("hold end", "", s => Text(s.HoldEnd), (s, value) => s with { HoldEnd = ArchiveRow.Moment(value) }),
        ("hold limit", "s", s => Text(s.HoldLimit?.TotalSeconds), (s, value) => s with { HoldLimit = TimeSpan.FromSeconds(Number(value)) }),
        ("released", "", s => s.Released is { } released ? released ? Yes : "false" : null, (s, value) => s with { Released = value == Yes }),
        ("place made coarser", "", s => s.Sensitivity == PlaceSensitivity.Open ? null : s.Sensitivity.ToString(),
            (s, value) => s with { Sensitivity = Enum.Parse<PlaceSensitivity>(value) }),
    ];

    private static readonly (string Type, string Unit, Func<FieldFrame, double?> Get, Func<FieldFrame, double, FieldFrame> Set)[] FrameFacts =
    [
        ("exposure time", "s", f => f.ExposureTime, (f, value) => f with { ExposureTime = value }),
        ("f-number", "", f => f.FNumber, (f, value) => f with { FNumber = value }),
        ("ISO speed", "", f => f.Iso, (f, value) => f with { Iso = value }),
        ("focal length", "mm", f => f.FocalLength, (f, value) => f with { FocalLength = value }),
        ("pixel size at the subject", "µm", f => f.MicrometresPerPixel, (f, value) => f with { MicrometresPerPixel = value }),
    ];

    public static ArchiveTable Of(LogSnapshot log) => new(
        "measurementorfact.csv",
        D.MeasurementOrFact,
        [D.DarwinCore + "occurrenceID", .. Names.Select(name => D.DarwinCore + name)],
        [
            .. log.Measurements.Select(m => (IReadOnlyList<string>)[m.SubjectId, m.Id, m.Type, m.Value, m.Unit, m.Accuracy, m.Method, ""]),
            .. log.Subjects.SelectMany(SubjectRows),
            .. log.Frames.SelectMany(FrameRows),
        ]);

    public static void Read(ArchiveRow row, string subjectId, ArchiveReading reading)
    {
        var id = row["measurementID"];
        var mark = id.LastIndexOf(Mark);
        var (owner, fact) = mark < 0 ? (id, "") : (id[..mark], id[(mark + 1)..]);
        if (owner == subjectId && Array.Find(SubjectFacts, candidate => candidate.Type == fact) is { Set: { } setSubject })
        {
            reading.Subjects[subjectId] = setSubject(reading.Subjects[subjectId], row["measurementValue"]);
        }
        else if (reading.Frames.TryGetValue(owner, out var frame) && Array.Find(FrameFacts, candidate => candidate.Type == fact) is { Set: { } setFrame })
        {
            reading.Frames[owner] = setFrame(frame, Number(row["measurementValue"]));
        }
        else
        {
            reading.Measurements.Add(Measurement(row, subjectId));
        }
    }

    private static FieldMeasurement Measurement(ArchiveRow row, string subjectId) => new()
    {
        Id = row["measurementID"],
        SubjectId = subjectId,
        Type = row["measurementType"],
        Value = row["measurementValue"],
        Unit = row["measurementUnit"],
        Accuracy = row["measurementAccuracy"],
        Method = row["measurementMethod"],
    };

    private static IEnumerable<IReadOnlyList<string>> SubjectRows(FieldSubject subject) =>
        from fact in SubjectFacts
        let value = fact.Get(subject)
        where value is not null
        select (IReadOnlyList<string>)[subject.Id, $"{subject.Id}{Mark}{fact.Type}", fact.Type, value, fact.Unit, "", "", ""];

    private static IEnumerable<IReadOnlyList<string>> FrameRows(FieldFrame frame) =>
        from fact in FrameFacts
        let value = fact.Get(frame)
        where value is not null
        select (IReadOnlyList<string>)
            [frame.SubjectId, $"{frame.Id}{Mark}{fact.Type}", fact.Type, Text(value)!, fact.Unit, "", "", $"of picture {frame.FileName}"];

    private static string? Text(double? value) => value is null ? null : OccurrenceTable.Text(value);

    private static string? Text(DateTimeOffset? value) => value is { } moment ? OccurrenceTable.Text(moment) : null;

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
