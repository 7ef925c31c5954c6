using System.Globalization;
using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Log;

/// <summary>How one kind of record is kept in a table: each column with what it takes from the record.</summary>
internal sealed class LogTable<T>(string name, (string Column, Func<T, object?> Get)[] columns, Func<LogRow, T> make)
{
    private readonly string _insert =
        $"INSERT INTO {name} ({string.Join(", ", columns.Select(column => column.Column))}) " +
        $"VALUES ({string.Join(", ", columns.Select(column => "$" + column.Column))}) " +
        $"ON CONFLICT (id) DO UPDATE SET {string.Join(", ", columns.Skip(1).Select(column => $"{column.Column} = excluded.{column.Column}"))}";

    public void Save(SqliteConnection connection, T record)
    {
        using var command = connection.CreateCommand();
        command.CommandText = _insert;
        foreach (var (column, get) in columns)
        {
            command.Parameters.AddWithValue("$" + column, Stored(get(record)) ?? DBNull.Value);
        }

        command.ExecuteNonQuery();
    }

    public List<T> Read(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT {string.Join(", ", columns.Select(column => column.Column))} FROM {name} ORDER BY rowid";
        using var reader = command.ExecuteReader();
        var records = new List<T>();
        while (reader.Read())
        {
            records.Add(make(new LogRow(reader)));
        }

        return records;
    }

    private static object? Stored(object? value) => value switch
    {
        DateTimeOffset moment => moment.ToString("O", CultureInfo.InvariantCulture),
        TimeSpan span => span.TotalSeconds,
        bool flag => flag ? 1 : 0,
        IReadOnlyList<string> names => string.Join(LogRow.ListSeparator, names),
        _ => value,
    };
}
