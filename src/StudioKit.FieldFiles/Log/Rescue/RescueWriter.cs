using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Writes a rescued log into a new file, in one go.</summary>
internal static class RescueWriter
{
    public static IReadOnlyList<FieldDiagnostic> Write(RescuedLog rescued, string path, TimeProvider time)
    {
        var opened = LogFile.OpenToWrite(path, LogStart.MustBeNew);
        if (!opened.IsSound)
        {
            return opened.Diagnostics;
        }

        try
        {
            using var connection = opened.Value;
            using var transaction = connection.BeginTransaction(deferred: false);
            CopyHistory(connection, rescued);
            LogSql.Run(connection, "INSERT INTO change (at, action) VALUES ($a, $b)", time.GetLocalNow().ToString("O", CultureInfo.InvariantCulture), nameof(LogAction.Rescued));
            var labels = new LogLabels(connection);
            foreach (var edit in LogEdits.Puts(rescued.Log))
            {
                LogSchema.Of(edit.Kind).Put(connection, edit.After!, null);
                labels.Of(edit.Kind, edit.After!.Id);
            }

            transaction.Commit();
            return [];
        }
        catch (SqliteException error)
        {
            // It is ours: it was made a moment ago, and nothing whole is in it.
            NewFile.Discard(path);
            return [LogFaults.Unwritten(error, path)];
        }
    }

    // The history is kept to be read; nothing is taken back across a rescue.
    private static void CopyHistory(SqliteConnection connection, RescuedLog rescued)
    {
        foreach (var row in rescued.Labels.Where(row => row.Values is [string, string kind, string, long] && Enum.TryParse<LogRecordKind>(kind, out _)))
        {
            LogSql.Run(connection, "INSERT OR IGNORE INTO label (short_id, kind, record, place) VALUES ($a, $b, $c, $d)", row.Values);
        }

        foreach (var row in rescued.Changes.Where(IsChange))
        {
            LogSql.Run(connection, "INSERT OR IGNORE INTO change (number, at, action, target) VALUES ($a, $b, $c, $d)", row.RowId, row.Values[1], row.Values[2], row.Values[3]);
        }

        foreach (var row in rescued.ChangedRecords)
        {
            LogSql.Run(
                connection,
                "INSERT INTO changed_record (change, place, kind, short_id, row, before, after, seal) SELECT $a, $b, $c, $d, $e, $f, $g, $h WHERE EXISTS (SELECT 1 FROM change WHERE number = $a)",
                row.Values);
        }
    }

    private static bool IsChange(FoundRow row) =>
        row.Values is [null, string at, string action, long or null]
        && row.RowId is > 0 and < long.MaxValue / 2
        && DateTimeOffset.TryParseExact(at, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
        && Enum.TryParse<LogAction>(action, out _);
}
