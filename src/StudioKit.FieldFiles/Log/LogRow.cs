using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>One row of a table, read by column name.</summary>
/// <remarks>A value that no record can hold is a <see cref="LogValueException"/>.</remarks>
internal readonly struct LogRow(LogBody body)
{
    /// <summary>Parts the names of a list within one column; the rules of the log keep the bar out of names.</summary>
    public const string ListSeparator = " | ";

    public string Text(string column) => body[column] as string ?? throw new LogValueException(column, "holds no text", "");

    /// <summary>Text of a column that earlier versions did not have.</summary>
    public string TextOrEmpty(string column) => body[column] is null ? "" : Text(column);

    public double? Number(string column) => body[column] switch
    {
        null => null,
        double number => number,
        long whole => whole,
        _ => throw new LogValueException(column, "holds no number"),
    };

    public int? Count(string column) => Number(column) switch
    {
        null => null,
        { } value when value == Math.Floor(value) && Math.Abs(value) <= int.MaxValue => (int)value,
        _ => throw new LogValueException(column, "holds no whole number"),
    };

    public bool? Flag(string column) => Count(column) is { } value ? value != 0 : null;

    public TimeSpan? Span(string column) => Number(column) switch
    {
        null => null,
        { } seconds when Math.Abs(seconds) < TimeSpan.MaxValue.TotalSeconds => TimeSpan.FromSeconds(seconds),
        _ => throw new LogValueException(column, "holds no length of time"),
    };

    public DateTimeOffset? Moment(string column) => body[column] is null ? null : Date(column)?.Moment ?? throw new LogValueException(column, "holds a day without an hour");

    public FieldDate? Date(string column) => body[column] is null
        ? null
        : FieldDate.TryRead(Text(column), _ => TimeSpan.Zero, out var date) ? date : throw new LogValueException(column, $"holds '{Text(column)}', which is no date");

    public PlaceSensitivity Sensitivity(string column) =>
        Enum.TryParse<PlaceSensitivity>(Text(column), out var value) && Enum.IsDefined(value) && value.ToString() == Text(column)
            ? value
            : throw new LogValueException(column, $"holds '{Text(column)}', which no StudioKit writes", nameof(PlaceSensitivity.Withheld));

    public IReadOnlyList<string> Names(string column) => Text(column).Split(ListSeparator, StringSplitOptions.RemoveEmptyEntries);
}
