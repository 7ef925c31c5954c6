using System.Globalization;

namespace StudioKit.Field.Log;

/// <summary>Makes the entries of a log: what each record is called.</summary>
internal static class LogEntries
{
    /// <summary>The entries in the order of their labels.</summary>
    /// <param name="log">The log.</param>
    /// <param name="labels">The label of each record that is shown.</param>
    public static IReadOnlyList<LogEntry> Of(LogSnapshot log, IReadOnlyList<ShortLabel> labels)
    {
        var entries = Unlabelled(log).ToDictionary(entry => entry.Id, StringComparer.Ordinal);
        return [.. labels.Select(label => entries[label.RecordId] with { ShortId = label.ShortId })];
    }

    private static IEnumerable<LogEntry> Unlabelled(LogSnapshot log)
    {
        var sessions = log.Sessions.ToDictionary(session => session.Id, StringComparer.Ordinal);
        var subjects = log.Subjects.ToDictionary(subject => subject.Id, StringComparer.Ordinal);
        return
        [
            .. log.Sessions.Select(session => new LogEntry(LogRecordKind.Session, session.Id, "", [.. Named(session.Name)], Day(session))),
            .. log.Subjects.Select(subject => new LogEntry(LogRecordKind.Subject, subject.Id, "", [.. Names(subject)], sessions.TryGetValue(subject.SessionId, out var of) ? About(of) : "")),
            .. log.Frames.Select(frame => new LogEntry(LogRecordKind.Frame, frame.Id, "", [frame.FileName], About(frame.SubjectId, subjects))),
            .. log.Measurements.Select(measurement => new LogEntry(
                LogRecordKind.Measurement, measurement.Id, "", [measurement.Type], $"{measurement.Value} {measurement.Unit}".Trim() + ", " + About(measurement.SubjectId, subjects))),
        ];
    }

    private static string[] Named(string name) => name.Length > 0 ? [name] : [];

    // As it is written on a label, then each part by itself.
    private static string[] Names(FieldSubject subject) =>
    [
        .. new[]
        {
            string.Join(' ', new[] { subject.ScientificName, subject.IdentificationQualifier }.Where(part => part.Length > 0)), subject.VernacularName, subject.ScientificName,
        }.Where(name => name.Length > 0).Distinct(StringComparer.Ordinal),
    ];

    private static string Day(FieldSession session) => session.Start.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string About(FieldSession session) => string.Join(", ", [.. Named(session.Name), Day(session)]);

    private static string About(string subjectId, Dictionary<string, FieldSubject> subjects) =>
        subjects.TryGetValue(subjectId, out var subject) && Names(subject) is [var name, ..] ? name : "";
}
