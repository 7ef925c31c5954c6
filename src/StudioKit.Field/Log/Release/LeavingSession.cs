namespace StudioKit.Field.Log.Release;

/// <summary>A session that leaves the log, with those of its subjects that do.</summary>
/// <param name="Session">The session as the log has it.</param>
/// <param name="Subjects">Its subjects, at least one.</param>
internal sealed record LeavingSession(FieldSession Session, IReadOnlyList<FieldSubject> Subjects)
{
    /// <summary>That of its most sensitive subject, which all of the session follows.</summary>
    public PlaceSensitivity Sensitivity { get; } = Subjects.Max(subject => subject.Sensitivity);

    /// <summary>Whether it holds anything sensitive.</summary>
    public bool IsSensitive => Sensitivity != PlaceSensitivity.Open;
}
