using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>The short identifiers that a log has given. None is ever taken back: a record that comes back from an undo has its own again.</summary>
/// <param name="connection">Connection to the log.</param>
internal sealed class LogLabels(SqliteConnection connection)
{
    // Place of the last one given, looked for once: nobody else gives any while a change is made.
    private long? _last;

    public static List<ShortLabel> Read(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT short_id, kind, record FROM label ORDER BY place";
        using var reader = command.ExecuteReader();
        var labels = new List<ShortLabel>();
        while (reader.Read())
        {
            if (Enum.TryParse<LogRecordKind>(Text(reader, 1), out var kind) && Enum.IsDefined(kind))
            {
                labels.Add(new ShortLabel(Text(reader, 0), kind, Text(reader, 2)));
            }
        }

        return labels;
    }

    // What is no text is the reader's to judge.
    private static string Text(SqliteDataReader reader, int place) => StoredColumn.Value(reader.Handle!, place) as string ?? reader.GetString(place);

    /// <summary>The short identifier of a record within one change, given now where it has none.</summary>
    public string Of(LogRecordKind kind, string record)
    {
        if (LogSql.Texts(connection, "SELECT short_id FROM label WHERE record = $a AND kind = $b ORDER BY place DESC LIMIT 1", record, kind.ToString()) is [var known])
        {
            return known;
        }

        var given = ShortId.Of(record, candidate => LogSql.Texts(connection, "SELECT short_id FROM label WHERE short_id = $a", candidate).Count > 0);
        _last = (_last ?? LogSql.Number(connection, "SELECT coalesce(max(place), 0) FROM label")) + 1;
        LogSql.Run(connection, "INSERT INTO label (short_id, kind, record, place) VALUES ($a, $b, $c, $d)", given, kind.ToString(), record, _last);
        return given;
    }

    /// <summary>Lets a short identifier follow its record to another full one.</summary>
    public static void Move(SqliteConnection connection, string shortId, string record) =>
        LogSql.Run(connection, "UPDATE label SET record = $a WHERE short_id = $b", record, shortId);
}
