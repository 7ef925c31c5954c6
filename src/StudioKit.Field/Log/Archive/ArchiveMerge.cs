using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Archive;

/// <summary>What of an archive is new to a log. What the log has stays as it is, and an exact record is never replaced by a coarse copy of itself.</summary>
/// <param name="New">Records that the log does not have.</param>
/// <param name="Same">Records that it has just so [1].</param>
/// <param name="Different">Records that it has otherwise.</param>
/// <param name="Exported">Subjects that left this log in a coarser form, and are here as they were recorded [1].</param>
public sealed record ArchiveMerge(LogSnapshot New, int Same, LogSnapshot Different, int Exported)
{
    /// <summary>Compares an archive with a log.</summary>
    /// <param name="here">The log.</param>
    /// <param name="archive">What was read of the archive.</param>
    public static ArchiveMerge Of(LogSnapshot here, LogSnapshot archive)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(archive);
        var coarse = here.Subjects.Select(subject => NeutralName.Of(subject.Id, subject.SessionId)).Except(here.Subjects.Select(subject => subject.Id), StringComparer.Ordinal)
            .ToHashSet(StringComparer.Ordinal);
        var own = archive.Subjects.Where(subject => coarse.Contains(subject.Id)).ToList();
        archive = Without(archive, own, here);
        var known = Records(here).ToDictionary(record => record.Key, record => record.Text, StringComparer.Ordinal);
        var incoming = Records(archive).ToList();
        var (fresh, different) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        foreach (var (key, text) in incoming)
        {
            (known.TryGetValue(key, out var mine) ? mine == text ? null : different : fresh)?.Add(key);
        }

        return new ArchiveMerge(Only(archive, fresh), incoming.Count - fresh.Count - different.Count, Only(archive, different), own.Count);
    }

    // A session of the archive that holds nothing but copies of what is here is such a copy, too.
    private static LogSnapshot Without(LogSnapshot archive, List<FieldSubject> own, LogSnapshot here)
    {
        var gone = own.Select(subject => subject.Id).ToHashSet(StringComparer.Ordinal);
        var subjects = archive.Subjects.Where(subject => !gone.Contains(subject.Id)).ToList();
        var copies = here.Sessions.Select(session => NeutralName.OfSession(session.Id)).Except(here.Sessions.Select(session => session.Id), StringComparer.Ordinal)
            .Except(subjects.Select(subject => subject.SessionId), StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        return new LogSnapshot(
            [.. archive.Sessions.Where(session => !copies.Contains(session.Id))], subjects,
            [.. archive.Frames.Where(frame => !gone.Contains(frame.SubjectId))], [.. archive.Measurements.Where(measurement => !gone.Contains(measurement.SubjectId))]);
    }

    // Records are alike where they would be exported alike.
    private static IEnumerable<(string Key, string Text)> Records(LogSnapshot log) =>
    [
        .. log.Sessions.Select(session => (Key(session), Text(RecordedFields.Of(session, null)))),
        .. log.Subjects.Select(subject => (Key(subject), subject.SessionId + Text(RecordedFields.Of(subject)) + Text(RecordedFields.FactsOf(subject)))),
        .. log.Frames.Select(frame => (Key(frame), Text(RecordedFields.Of(frame, "", () => "")) + Text(RecordedFields.FactsOf(frame)))),
        .. log.Measurements.Select(measurement => (Key(measurement), measurement.SubjectId + Text(RecordedFields.Of(measurement, "")))),
    ];

    private static string Text(IEnumerable<RecordedField> fields) => string.Concat(fields.Select(field => $"\n{field.Term}\n{field.Text}"));

    private static LogSnapshot Only(LogSnapshot log, HashSet<string> keys) => new(
        [.. log.Sessions.Where(session => keys.Contains(Key(session)))], [.. log.Subjects.Where(subject => keys.Contains(Key(subject)))],
        [.. log.Frames.Where(frame => keys.Contains(Key(frame)))], [.. log.Measurements.Where(measurement => keys.Contains(Key(measurement)))]);

    private static string Key(FieldSession session) => "session " + session.Id;

    private static string Key(FieldSubject subject) => "subject " + subject.Id;

    private static string Key(FieldFrame frame) => "frame " + frame.Id;

    private static string Key(FieldMeasurement measurement) => "measurement " + measurement.Id;
}
