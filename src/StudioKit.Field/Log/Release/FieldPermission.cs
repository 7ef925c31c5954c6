namespace StudioKit.Field.Log.Release;

/// <summary>A user's word that a field may leave the log as it was recorded.</summary>
/// <param name="Term">Short name of its term, e.g. <c>habitat</c>.</param>
/// <param name="RecordId">Session or subject that it holds for; empty for all.</param>
public sealed record FieldPermission(string Term, string RecordId = "");
