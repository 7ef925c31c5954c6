using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>The rows of one table of a log, whatever they stand for.</summary>
internal class StoredRows(LogRecordKind kind, IReadOnlyList<string> columns)
{
    public const string SealColumn = "seal";

    public LogRecordKind Kind { get; } = kind;

    public string Name { get; } = kind.ToString().ToLowerInvariant();

    public IReadOnlyList<string> Columns { get; } = columns;

    /// <summary>Every row in order, read as it is asked for, with the seal that it was written under; none in a log of an earlier version.</summary>
    public IEnumerable<(long RowId, LogBody Body, string? Seal)> Rows(SqliteConnection connection) => Select(connection, "ORDER BY rowid", null);

    /// <summary>The row of a record; none where there is none.</summary>
    public (long RowId, LogBody Body)? Find(SqliteConnection connection, string id) =>
        Select(connection, "WHERE id = $id", id).Take(1).ToList() is [var row] ? (row.RowId, row.Body) : null;

    /// <summary>Puts a row in, or in the place of the one with its identifier.</summary>
    /// <param name="connection">Connection to the log.</param>
    /// <param name="body">The row.</param>
    /// <param name="rowId">Where it stood before it was taken out; none for a new one.</param>
    /// <returns>Where it stands.</returns>
    public long Put(SqliteConnection connection, LogBody body, long? rowId)
    {
        // Columns that a later version added keep their defaults where the row is older.
        string[] held = [.. body.Values.Select(value => value.Key), SealColumn];
        using var command = connection.CreateCommand();
        command.CommandText =
            $"INSERT INTO {Name} (rowid, {string.Join(", ", held)}) VALUES ($rowid, {string.Join(", ", held.Select(column => "$" + column))}) " +
            $"ON CONFLICT (id) DO UPDATE SET {string.Join(", ", held.Select(column => $"{column} = excluded.{column}"))} RETURNING rowid";
        command.Parameters.AddWithValue("$rowid", rowId ?? (object)DBNull.Value);
        command.Parameters.AddWithValue("$" + SealColumn, body.Seal);
        foreach (var (column, value) in body.Values)
        {
            command.Parameters.AddWithValue("$" + column, value ?? DBNull.Value);
        }

        return (long)command.ExecuteScalar()!;
    }

    public void Remove(SqliteConnection connection, string id)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"DELETE FROM {Name} WHERE id = $id";
        command.Parameters.AddWithValue("$id", id);
        command.ExecuteNonQuery();
    }

    private IEnumerable<(long RowId, LogBody Body, string? Seal)> Select(SqliteConnection connection, string which, string? id)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT rowid AS row_number, * FROM {Name} {which}";
        command.Parameters.AddWithValue("$id", id ?? "");
        using var reader = command.ExecuteReader();
        var places = Enumerable.Range(1, reader.FieldCount - 1).ToDictionary(reader.GetName, place => place, StringComparer.Ordinal);
        var held = Columns.Where(places.ContainsKey).Select(column => new StoredColumn(column, places[column])).ToArray();
        var seal = places.TryGetValue(SealColumn, out var place) ? place : (int?)null;
        while (reader.Read())
        {
            var row = reader.Handle!;
            yield return (reader.GetInt64(0), new LogBody(Array.ConvertAll(held, column => column.Read(row))), seal is { } at ? StoredColumn.Value(row, at) as string : null);
        }
    }
}
