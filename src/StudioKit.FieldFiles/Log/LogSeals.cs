using System.Globalization;
using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Log;

/// <summary>Finds rows that are not as they were written, while they are read: SQLite keeps no check sums, so a bit that flipped within a text would not be noticed.</summary>
internal sealed class LogSeals
{
    private readonly BodyText _text = new();
    private readonly List<string> _broken = [];

    /// <summary>One sentence for each such row.</summary>
    public IReadOnlyList<string> Broken => _broken;

    /// <summary>Looks at every row of a log.</summary>
    public static LogSeals Of(SqliteConnection connection)
    {
        var seals = new LogSeals();
        foreach (var table in LogSchema.Tables)
        {
            foreach (var row in table.Rows(connection))
            {
                seals.Look(table, row);
            }
        }

        return seals;
    }

    /// <summary>Looks at one row.</summary>
    public void Look(StoredRows table, (long RowId, LogBody Body, string? Seal) row)
    {
        if (row.Seal is { } seal && seal != row.Body.SealBy(_text))
        {
            _broken.Add(string.Create(CultureInfo.InvariantCulture, $"row {row.RowId} of {table.Name} ({row.Body["id"]}) is not as it was written; it is damaged, or another program has changed it"));
        }
    }
}
