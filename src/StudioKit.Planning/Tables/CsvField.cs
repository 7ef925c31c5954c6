namespace StudioKit.Planning.Tables;

/// <summary>One field of a comma-separated table and where it stands.</summary>
/// <param name="Text">Its text, without quotes and, where it is not quoted, without outer blanks.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column in characters, counted from 1.</param>
public sealed record CsvField(string Text, int Line, int Column);
