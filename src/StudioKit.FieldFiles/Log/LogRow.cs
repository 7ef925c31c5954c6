using System.Globalization;
using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Log;

/// <summary>One row of a table, read by column name.</summary>
internal readonly struct LogRow(SqliteDataReader reader)
{
    /// <summary>Parts the names of a list within one column; the rules of the log keep the bar out of names.</summary>
    public const string ListSeparator = " | ";

    public string Text(string column) => reader.GetString(reader.GetOrdinal(column));

    public double? Number(string column) => IsNull(column) ? null : reader.GetDouble(reader.GetOrdinal(column));

    public int? Count(string column) => IsNull(column) ? null : reader.GetInt32(reader.GetOrdinal(column));

    public bool? Flag(string column) => Count(column) is { } value ? value != 0 : null;

    public TimeSpan? Span(string column) => Number(column) is { } seconds ? TimeSpan.FromSeconds(seconds) : null;

    public DateTimeOffset? Moment(string column) => IsNull(column)
        ? null
        : DateTimeOffset.ParseExact(Text(column), "O", CultureInfo.InvariantCulture);

    public IReadOnlyList<string> Names(string column) => Text(column).Split(ListSeparator, StringSplitOptions.RemoveEmptyEntries);

    private bool IsNull(string column) => reader.IsDBNull(reader.GetOrdinal(column));
}
