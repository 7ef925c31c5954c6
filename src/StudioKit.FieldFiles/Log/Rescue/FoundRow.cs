namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>A row found in a damaged log.</summary>
/// <param name="RowId">Its number.</param>
/// <param name="Values">Its values in the order of the file.</param>
internal sealed record FoundRow(long RowId, object?[] Values);
