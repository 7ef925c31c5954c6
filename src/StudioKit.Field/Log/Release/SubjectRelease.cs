namespace StudioKit.Field.Log.Release;

/// <summary>What leaves the log of a subject; each part is judged when it is asked for.</summary>
public sealed class SubjectRelease
{
    private readonly Lazy<ReleasedRecord> _record;
    private readonly Lazy<ReleasedRecord> _facts;

    internal SubjectRelease(FieldSubject subject, string publishedId, Func<SubjectRelease, ReleasedRecord> record, Func<ReleasedRecord> facts)
    {
        (Subject, PublishedId) = (subject, publishedId);
        _record = new(() => record(this), isThreadSafe: false);
        _facts = new(facts, isThreadSafe: false);
    }

    /// <summary>The subject as the log has it.</summary>
    public FieldSubject Subject { get; }

    /// <summary>Identifier that it leaves under.</summary>
    public string PublishedId { get; }

    /// <summary>Its own fields, with an account of what of it and of all that hangs on it was made coarser or withheld.</summary>
    public ReleasedRecord Record => _record.Value;

    /// <summary>What is exported as measurements though the log keeps it with the subject.</summary>
    public ReleasedRecord Facts => _facts.Value;

    /// <summary>Its pictures.</summary>
    public required IReadOnlyList<FrameRelease> Frames { get; init; }

    /// <summary>Its measurements.</summary>
    public required IReadOnlyList<ReleasedRecord> Measurements { get; init; }
}
