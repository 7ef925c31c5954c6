using System.Globalization;
using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Log;

/// <summary>Finds rows that are not as they were written: SQLite keeps no check sums, so a bit that flipped within a text would not be noticed.</summary>
internal static class LogSeals
{
    /// <summary>One sentence for each such row.</summary>
    public static IEnumerable<string> Broken(SqliteConnection connection) =>
        from table in LogSchema.Tables
        from row in table.Rows(connection)
        where row.Seal is { } seal && seal != row.Body.Seal
        select string.Create(CultureInfo.InvariantCulture, $"row {row.RowId} of {table.Name} ({row.Body["id"]}) is not as it was written; it is damaged, or another program has changed it");
}
