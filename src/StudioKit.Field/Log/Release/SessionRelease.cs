namespace StudioKit.Field.Log.Release;

/// <summary>What leaves the log of a session.</summary>
/// <param name="Session">The session as the log has it.</param>
/// <param name="Sensitivity">That of its most sensitive subject, which all of the session follows.</param>
/// <param name="Record">Its own fields.</param>
/// <param name="Subjects">Its subjects.</param>
public sealed record SessionRelease(
    FieldSession Session, PlaceSensitivity Sensitivity, ReleasedRecord Record, IReadOnlyList<SubjectRelease> Subjects)
{
    /// <summary>Whether it holds anything sensitive.</summary>
    public bool IsSensitive => Sensitivity != PlaceSensitivity.Open;
}
