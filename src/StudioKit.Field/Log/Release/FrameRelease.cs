namespace StudioKit.Field.Log.Release;

/// <summary>What leaves the log of a picture's record.</summary>
public sealed class FrameRelease
{
    private readonly Lazy<ReleasedRecord> _facts;

    /// <summary>What leaves of a picture.</summary>
    /// <param name="frame">The frame as the log has it.</param>
    /// <param name="fileName">File name that it leaves under.</param>
    /// <param name="record">Its fields.</param>
    /// <param name="facts">Judges its settings.</param>
    internal FrameRelease(FieldFrame frame, string fileName, ReleasedRecord record, Func<ReleasedRecord> facts) =>
        (Frame, FileName, Record, _facts) = (frame, fileName, record, new(facts, isThreadSafe: false));

    /// <summary>The frame as the log has it.</summary>
    public FieldFrame Frame { get; }

    /// <summary>File name that it leaves under.</summary>
    public string FileName { get; }

    /// <summary>Its fields.</summary>
    public ReleasedRecord Record { get; }

    /// <summary>Its settings, which are exported as measurements; judged when they are asked for.</summary>
    public ReleasedRecord Facts => _facts.Value;
}
