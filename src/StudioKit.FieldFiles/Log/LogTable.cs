using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>How one kind of record is kept in a table: each column with what it takes from the record.</summary>
internal sealed class LogTable<T>(LogRecordKind kind, (string Column, Func<T, object?> Get)[] columns, Func<LogRow, T> make)
    : StoredRows(kind, [.. columns.Select(column => column.Column)])
    where T : class
{
    /// <summary>The row that a record is kept as.</summary>
    public LogBody Body(T record) => new([.. columns.Select(column => KeyValuePair.Create(column.Column, Stored(column.Get(record))))]);

    /// <summary>The record that a row holds.</summary>
    /// <exception cref="FormatException">It holds none.</exception>
    public T Record(LogBody body) => make(new LogRow(body));

    /// <summary>Every record, in the order in which they were put in.</summary>
    /// <param name="connection">Connection to the log.</param>
    /// <param name="seals">Notes the rows that are not as they were written.</param>
    /// <exception cref="FormatException">A row holds no record.</exception>
    public List<T> Read(SqliteConnection connection, LogSeals seals)
    {
        var records = new List<T>();
        foreach (var row in Rows(connection))
        {
            seals.Look(this, row);
            records.Add(Named(row.RowId, row.Body));
        }

        return records;
    }

    private T Named(long row, LogBody body)
    {
        try
        {
            return Record(body);
        }
        catch (FormatException fault)
        {
            throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"row {row} of {Name}: {fault.Message}"), fault);
        }
    }

    private static object? Stored(object? value) => value switch
    {
        DateTimeOffset moment => moment.ToString("O", CultureInfo.InvariantCulture),
        FieldDate { Moment: { } moment } => Stored(moment),
        FieldDate day => day.ToString(),
        TimeSpan span => span.TotalSeconds,
        bool flag => flag ? 1L : 0L,
        int whole => (long)whole,
        Enum word => word.ToString(),
        IReadOnlyList<string> names => string.Join(LogRow.ListSeparator, names),
        _ => value,
    };
}
