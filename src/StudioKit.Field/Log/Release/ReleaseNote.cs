namespace StudioKit.Field.Log.Release;

/// <summary>Something about a release that a user should know before it leaves.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="RecordId">Session or subject that it is about; empty for the data set.</param>
/// <param name="Detail">The other session's identifier, the sensitive subject's, the term or the word.</param>
/// <param name="Count">How many subjects it touches [1].</param>
public sealed record ReleaseNote(ReleaseNoteKind Kind, string RecordId, string Detail = "", int Count = 0);
