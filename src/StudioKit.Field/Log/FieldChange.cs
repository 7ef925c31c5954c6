namespace StudioKit.Field.Log;

/// <summary>One field of a record before and after a change.</summary>
/// <param name="Field">Name of the field as the log keeps it, words parted by underscores.</param>
/// <param name="Before">What it held, as text; empty where it was empty or the record was new.</param>
/// <param name="After">What it holds since; empty where it is empty or the record is gone.</param>
public sealed record FieldChange(string Field, string Before, string After);
