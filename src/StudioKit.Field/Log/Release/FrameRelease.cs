namespace StudioKit.Field.Log.Release;

/// <summary>What leaves the log of a picture's record.</summary>
/// <param name="Frame">The frame as the log has it.</param>
/// <param name="FileName">File name that it leaves under.</param>
/// <param name="Record">Its fields.</param>
/// <param name="Facts">Its settings, which are exported as measurements.</param>
public sealed record FrameRelease(FieldFrame Frame, string FileName, ReleasedRecord Record, ReleasedRecord Facts);
