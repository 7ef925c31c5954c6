namespace StudioKit.Field.Log.Archive;

/// <summary>One field of a table as meta.xml describes it.</summary>
/// <param name="Term">Full name of its term.</param>
/// <param name="Index">Column, counted from 0; none where the default holds for all rows.</param>
/// <param name="Default">Value where a row has none.</param>
internal sealed record ArchiveColumn(string Term, int? Index, string Default);
