namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>A row found in a damaged log.</summary>
/// <param name="RowId">Its number.</param>
/// <param name="Values">Its values in the order of the file.</param>
/// <param name="AmongUnreadable">Whether its page also holds rows that cannot be read, as one does whose count of rows is spoilt: what was taken out may then be read as a row.</param>
internal sealed record FoundRow(long RowId, object?[] Values, bool AmongUnreadable = false);
