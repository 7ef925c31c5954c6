namespace StudioKit.Field.Log.Release;

/// <summary>What leaves the log of a subject.</summary>
/// <param name="Subject">The subject as the log has it.</param>
/// <param name="Record">Its own fields.</param>
/// <param name="Facts">What is exported as measurements though the log keeps it with the subject.</param>
/// <param name="Frames">Its pictures.</param>
/// <param name="Measurements">Its measurements.</param>
public sealed record SubjectRelease(
    FieldSubject Subject, ReleasedRecord Record, ReleasedRecord Facts, IReadOnlyList<FrameRelease> Frames, IReadOnlyList<ReleasedRecord> Measurements);
