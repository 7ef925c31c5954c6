using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Columns of a log's tables in the order of the file, asked of SQLite itself.</summary>
internal static class FileColumns
{
    private static readonly Dictionary<string, string[]> First = Of(1);
    private static readonly Dictionary<string, string[]> Now = Of(LogSchema.Version);

    /// <summary>Columns that a row of a table has in this version; earlier ones have fewer of them.</summary>
    public static string[] Of(string table) => Now[table];

    /// <summary>Whether a row can be one of a table, by the number of its values.</summary>
    public static bool Fit(string table, FoundRow row) =>
        row.Values.Length <= Now[table].Length && row.Values.Length >= (First.TryGetValue(table, out var columns) ? columns : Now[table]).Length;

    private static Dictionary<string, string[]> Of(int version)
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        foreach (var step in LogSchema.Steps.Take(version))
        {
            LogSql.Run(connection, step);
        }

        return LogSql.Texts(connection, "SELECT name FROM sqlite_schema WHERE type = 'table'").ToDictionary(
            table => table, table => LogSql.Texts(connection, "SELECT name FROM pragma_table_info($a)", table).ToArray(), StringComparer.Ordinal);
    }
}
