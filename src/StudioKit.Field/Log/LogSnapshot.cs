namespace StudioKit.Field.Log;

/// <summary>Everything a log holds at one moment, each kind in the order in which it was put in.</summary>
/// <param name="Sessions">Sessions.</param>
/// <param name="Subjects">Subjects.</param>
/// <param name="Frames">Frames.</param>
/// <param name="Measurements">Measurements.</param>
public sealed record LogSnapshot(
    IReadOnlyList<FieldSession> Sessions,
    IReadOnlyList<FieldSubject> Subjects,
    IReadOnlyList<FieldFrame> Frames,
    IReadOnlyList<FieldMeasurement> Measurements)
{
    /// <summary>A log with nothing in it.</summary>
    public static LogSnapshot Empty { get; } = new([], [], [], []);

    /// <summary>Kind and identifier of every record, those first that others belong to.</summary>
    public IEnumerable<(LogRecordKind Kind, string Id)> Records =>
        Sessions.Select(session => (LogRecordKind.Session, session.Id))
            .Concat(Subjects.Select(subject => (LogRecordKind.Subject, subject.Id)))
            .Concat(Frames.Select(frame => (LogRecordKind.Frame, frame.Id)))
            .Concat(Measurements.Select(measurement => (LogRecordKind.Measurement, measurement.Id)));

    /// <summary>A record with everything that belongs to it; nothing where the log has no such record.</summary>
    /// <param name="id">Full identifier of the record.</param>
    public LogSnapshot With(string id)
    {
        var sessions = Sessions.Where(session => session.Id == id).ToList();
        var subjects = Subjects.Where(subject => subject.Id == id || sessions.Exists(session => session.Id == subject.SessionId)).ToList();
        var ids = subjects.Select(subject => subject.Id).ToHashSet(StringComparer.Ordinal);
        return new LogSnapshot(
            sessions,
            subjects,
            [.. Frames.Where(frame => frame.Id == id || ids.Contains(frame.SubjectId))],
            [.. Measurements.Where(measurement => measurement.Id == id || ids.Contains(measurement.SubjectId))]);
    }
}
