namespace StudioKit.FieldFiles.Log;

/// <summary>A column holds a value that no record can hold.</summary>
internal sealed class LogValueException(string column, string what, object? safe = null) : FormatException($"{column} {what}")
{
    /// <summary>The column.</summary>
    public string Column { get; } = column;

    /// <summary>What can stand in its place without telling anything wrong.</summary>
    public object? Safe { get; } = safe;
}
