namespace StudioKit.Field.Log.Matching;

/// <summary>Whom a picture shows.</summary>
/// <param name="Kind">How that is known, or why it is not.</param>
/// <param name="Subject">The subject; none where it is not known.</param>
public sealed record SubjectMatch(SubjectMatchKind Kind, FieldSubject? Subject)
{
    /// <summary>When the picture was taken, on the place's clock; none where its file has no time.</summary>
    public DateTimeOffset? Taken { get; init; }

    /// <summary>Where nobody was in hand, the subject whose time is nearest; none where no subject was ever in hand.</summary>
    public FieldSubject? Nearest { get; init; }

    /// <summary>How far its time is away; negative where the picture came before it.</summary>
    public TimeSpan Gap { get; init; }

    /// <summary>Others in hand at the time.</summary>
    public IReadOnlyList<FieldSubject> Others { get; init; } = [];
}
