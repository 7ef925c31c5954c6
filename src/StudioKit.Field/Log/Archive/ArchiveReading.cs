namespace StudioKit.Field.Log.Archive;

/// <summary>Records gathered while an archive is read.</summary>
internal sealed class ArchiveReading
{
    public Dictionary<string, FieldSession> Sessions { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, FieldSubject> Subjects { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, FieldFrame> Frames { get; } = new(StringComparer.Ordinal);

    public List<FieldMeasurement> Measurements { get; } = [];

    public LogSnapshot Snapshot => new([.. Sessions.Values], [.. Subjects.Values], [.. Frames.Values], Measurements);
}
