using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>Records as rows to put in or to take out.</summary>
internal static class LogEdits
{
    /// <summary>Rows to put in, each after those that it belongs to.</summary>
    public static IEnumerable<RowEdit> Puts(LogSnapshot records) =>
    [
        .. records.Sessions.Select(session => new RowEdit(LogRecordKind.Session, null, LogSchema.Sessions.Body(session))),
        .. records.Subjects.Select(subject => new RowEdit(LogRecordKind.Subject, null, LogSchema.Subjects.Body(subject))),
        .. records.Frames.Select(frame => new RowEdit(LogRecordKind.Frame, null, LogSchema.Frames.Body(frame))),
        .. records.Measurements.Select(measurement => new RowEdit(LogRecordKind.Measurement, null, LogSchema.Measurements.Body(measurement))),
    ];

    /// <summary>Rows to take out, each before those that it belongs to.</summary>
    public static IEnumerable<RowEdit> Removals(LogSnapshot records) => records.Records.Reverse().Select(record => new RowEdit(record.Kind, record.Id, null));
}
