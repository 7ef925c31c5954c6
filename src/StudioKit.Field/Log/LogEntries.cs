using System.Globalization;

namespace StudioKit.Field.Log;

/// <summary>Makes the entries of a log: what each record is called.</summary>
internal static class LogEntries
{
    public static IReadOnlyList<LogEntry> Of(LogSnapshot log, IReadOnlyList<ShortLabel> labels)
    {
        // A record that was moved has two labels in a row; the later one is shown.
        var order = new Dictionary<string, (int Place, string ShortId)>(StringComparer.Ordinal);
        foreach (var (label, place) in labels.Select((label, place) => (label, place)))
        {
            order[label.RecordId] = (place, label.ShortId);
        }

        return [.. Unlabelled(log).Where(entry => order.ContainsKey(entry.Id)).OrderBy(entry => order[entry.Id].Place).Select(entry => entry with { ShortId = order[entry.Id].ShortId })];
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
