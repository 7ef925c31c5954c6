namespace StudioKit.Field.Log.Archive;

/// <summary>Records gathered while an archive is read.</summary>
internal sealed class ArchiveReading
{
    private readonly Dictionary<string, string> _sessionCells = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FieldSession> _sessions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FieldMeasurement> _measurements = new(StringComparer.Ordinal);

    public Dictionary<string, FieldSubject> Subjects { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, FieldFrame> Frames { get; } = new(StringComparer.Ordinal);

    public LogSnapshot Snapshot => new([.. _sessions.Values], [.. Subjects.Values], [.. Frames.Values], [.. _measurements.Values]);

    /// <summary>Adds a row of the core; every row of one session must tell it alike.</summary>
    public void Add(FieldSession session, FieldSubject subject, ArchiveRow row)
    {
        var cells = string.Join('\n', OccurrenceTable.SessionColumns.Select(term => row[term]));
        if (!_sessionCells.TryAdd(session.Id, cells) && _sessionCells[session.Id] != cells)
        {
            throw row.Fault("FLD469", $"the session '{session.Id}' is told in another way than in an earlier row.");
        }

        _sessions[session.Id] = session;
        if (!Subjects.TryAdd(subject.Id, subject))
        {
            throw row.Fault("FLD469", $"the occurrence '{subject.Id}' is there already.");
        }
    }

    public void Add(FieldMeasurement measurement, ArchiveRow row)
    {
        if (!_measurements.TryAdd(measurement.Id, measurement))
        {
            throw row.Fault("FLD469", $"the measurement '{measurement.Id}' is there already.");
        }
    }
}
