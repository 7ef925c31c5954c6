using System.Globalization;
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

    /// <summary>Short names of the columns behind the first, which joins the core.</summary>
    public static readonly string[] Columns =
        ["measurementID", "measurementType", "measurementValue", "measurementUnit", "measurementAccuracy", "measurementMethod", "measurementRemarks"];

    private static readonly (string Type, string Unit, Func<FieldSubject, string, FieldSubject> Set)[] OfSubject =
    [
        (SubjectFacts.HoldStart, "", (s, value) => s with { HoldStart = ArchiveRow.Moment(value) }),
        (SubjectFacts.HoldEnd, "", (s, value) => s with { HoldEnd = ArchiveRow.Moment(value) }),
        (SubjectFacts.HoldLimit, "s", (s, value) => s with { HoldLimit = TimeSpan.FromSeconds(Number(value)) }),
        (SubjectFacts.Released, "", (s, value) => s with { Released = value == Yes }),
        (SubjectFacts.Sensitivity, "", (s, value) => s with { Sensitivity = SensitivityOf(value) }),
    ];

    private static readonly (string Type, string Unit, Func<FieldFrame, string, FieldFrame> Set)[] OfFrame =
    [
        (FrameFacts.ExposureTime, "s", (f, value) => f with { ExposureTime = Number(value) }),
        (FrameFacts.FNumber, "", (f, value) => f with { FNumber = Number(value) }),
        (FrameFacts.IsoSpeed, "", (f, value) => f with { Iso = Number(value) }),
        (FrameFacts.FocalLength, "mm", (f, value) => f with { FocalLength = Number(value) }),
        (FrameFacts.PixelSize, "µm", (f, value) => f with { MicrometresPerPixel = Number(value) }),
        (FrameFacts.Lens, "", (f, value) => f with { Lens = value }),
        (FrameFacts.Framing, "", (f, value) => f with { Framing = value }),
        (FrameFacts.SetUp, "", (f, value) => f with { SetUp = value }),
    ];

    public static ArchiveTable Of(LogRelease release)
    {
        var subjects = release.Sessions.SelectMany(session => session.Subjects).ToList();
        return new(
            "measurementorfact.csv",
            D.MeasurementOrFact,
            [D.DarwinCore + "occurrenceID", .. Columns.Select(name => D.DarwinCore + name)],
            [
                .. subjects.SelectMany(MeasurementRows),
                .. subjects.SelectMany(subject => FactRows(subject, subject.Facts, OfSubject.Select(fact => (fact.Type, fact.Unit)), "")),
                .. from subject in subjects
                   from frame in subject.Frames
                   from row in FactRows(subject, frame.Facts, OfFrame.Select(fact => (fact.Type, fact.Unit)), $"of picture {frame.FileName}")
                   select row,
            ]);
    }

    public static void Read(ArchiveRow row, string subjectId, ArchiveReading reading)
    {
        var id = row["measurementID"];
        var mark = id.LastIndexOf(Mark);
        var (owner, fact) = mark < 0 ? (id, "") : (id[..mark], id[(mark + 1)..]);
        if (owner == subjectId && Array.Find(OfSubject, candidate => candidate.Type == fact) is { Set: { } setSubject })
        {
            reading.Subjects[subjectId] = setSubject(reading.Subjects[subjectId], row["measurementValue"]);
        }
        else if (reading.Frames.TryGetValue(owner, out var frame) && Array.Find(OfFrame, candidate => candidate.Type == fact) is { Set: { } setFrame })
        {
            reading.Frames[owner] = setFrame(frame, row["measurementValue"]);
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

    // One whose type or value is withheld says nothing.
    private static IEnumerable<IReadOnlyList<string>> MeasurementRows(SubjectRelease subject) =>
        from measurement in subject.Measurements
        where measurement["measurementType"].Length > 0 && measurement["measurementValue"].Length > 0
        select (IReadOnlyList<string>)[subject.Record.PublishedId, .. Columns.Select(term => measurement[term])];

    private static IEnumerable<IReadOnlyList<string>> FactRows(
        SubjectRelease subject, ReleasedRecord facts, IEnumerable<(string Type, string Unit)> kinds, string remarks) =>
        from kind in kinds
        let value = facts[kind.Type]
        where value.Length > 0
        select (IReadOnlyList<string>)
            [subject.Record.PublishedId, $"{facts.PublishedId}{Mark}{kind.Type}", kind.Type, value, kind.Unit, "", "", remarks];

    // A number is no name, though it parses as one.
    private static PlaceSensitivity SensitivityOf(string text) =>
        Enum.TryParse<PlaceSensitivity>(text, out var value) && Enum.IsDefined(value) && value.ToString() == text
            ? value
            : throw new FormatException($"'{text}' does not say how much coarser a place was made.");

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
