namespace StudioKit.Field.Log.Release;

/// <summary>The frames and measurements of a log that leave, found by their subject.</summary>
internal sealed class LogRecords(LogSnapshot log, IReadOnlyList<FieldFrame> leaving)
{
    private readonly ILookup<string, FieldFrame> _frames = leaving.ToLookup(frame => frame.SubjectId, StringComparer.Ordinal);
    private readonly ILookup<string, FieldMeasurement> _measurements = log.Measurements.ToLookup(measurement => measurement.SubjectId, StringComparer.Ordinal);

    public IEnumerable<FieldFrame> FramesOf(FieldSubject subject) => _frames[subject.Id];

    public IEnumerable<FieldMeasurement> MeasurementsOf(FieldSubject subject) => _measurements[subject.Id];
}
