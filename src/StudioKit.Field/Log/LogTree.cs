namespace StudioKit.Field.Log;

/// <summary>What of a log belongs to what, found at once however long the log is; each in the order in which it was put in.</summary>
/// <param name="log">The log.</param>
public sealed class LogTree(LogSnapshot log)
{
    private readonly Lazy<ILookup<string, FieldSubject>> _subjects = new(() => log.Subjects.ToLookup(subject => subject.SessionId, StringComparer.Ordinal));
    private readonly Lazy<ILookup<string, FieldFrame>> _frames = new(() => log.Frames.ToLookup(frame => frame.SubjectId, StringComparer.Ordinal));
    private readonly Lazy<ILookup<string, FieldMeasurement>> _measurements = new(() => log.Measurements.ToLookup(measurement => measurement.SubjectId, StringComparer.Ordinal));

    /// <summary>The log.</summary>
    public LogSnapshot Log => log;

    /// <summary>Subjects of a session; none where the log has no such session.</summary>
    /// <param name="session">The session.</param>
    public IEnumerable<FieldSubject> Of(FieldSession session) => _subjects.Value[(session ?? throw new ArgumentNullException(nameof(session))).Id];

    /// <summary>Frames of a subject; none where the log has no such subject.</summary>
    /// <param name="subject">The subject.</param>
    public IEnumerable<FieldFrame> Frames(FieldSubject subject) => _frames.Value[(subject ?? throw new ArgumentNullException(nameof(subject))).Id];

    /// <summary>Measurements of a subject; none where the log has no such subject.</summary>
    /// <param name="subject">The subject.</param>
    public IEnumerable<FieldMeasurement> Measurements(FieldSubject subject) => _measurements.Value[(subject ?? throw new ArgumentNullException(nameof(subject))).Id];
}
