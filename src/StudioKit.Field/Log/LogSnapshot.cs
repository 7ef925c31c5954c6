namespace StudioKit.Field.Log;

/// <summary>Everything a log holds at one moment.</summary>
/// <param name="Sessions">Sessions.</param>
/// <param name="Subjects">Subjects.</param>
/// <param name="Frames">Frames.</param>
/// <param name="Measurements">Measurements.</param>
public sealed record LogSnapshot(
    IReadOnlyList<FieldSession> Sessions,
    IReadOnlyList<FieldSubject> Subjects,
    IReadOnlyList<FieldFrame> Frames,
    IReadOnlyList<FieldMeasurement> Measurements);
