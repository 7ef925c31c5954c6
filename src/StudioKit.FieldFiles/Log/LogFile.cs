using Microsoft.Data.Sqlite;
using SQLitePCL;
using StudioKit.Field;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Log;

/// <summary>Opens the file of a log and brings it to the version of this program.</summary>
internal static class LogFile
{
    /// <summary>Opens a log for writing.</summary>
    /// <param name="path">File.</param>
    /// <param name="start">Whether it is started, or has to be there.</param>
    /// <returns>The connection, or why there is none.</returns>
    public static FieldResult<SqliteConnection> OpenToWrite(string path, LogStart start)
    {
        if (LogPath.Refusal(path, mustExist: start == LogStart.Never) is { } refusal)
        {
            return refusal;
        }

        try
        {
            // Who is first makes it, whole; all others find it. An empty file is a log in which nothing has been done yet.
            if (!NewFile.TryCreate(path, stream => stream.Write(Fresh(path))) && start == LogStart.MustBeNew)
            {
                return new FieldDiagnostic("FLD459", path, "There is a file of this name; it was left as it is.", "Name a new one.");
            }

            return Opened(path, connection => Prepare(connection, path));
        }
        catch (SqliteException error)
        {
            return LogFaults.Unread(error, path);
        }
        catch (Exception error) when (LogFaults.IsOfDamage(error))
        {
            return LogFaults.Damaged(path, error.Message.TrimEnd('.') + ".");
        }
        catch (FileWritingException error)
        {
            return new FieldDiagnostic("FLD452", path, $"The log cannot be started: {error.Message}");
        }
    }

    /// <summary>Opens a log for reading; nothing about it is changed.</summary>
    /// <param name="path">File.</param>
    /// <returns>The connection, or why there is none.</returns>
    /// <exception cref="SqliteException">SQLite cannot read it where it lies, as nothing may be written beside it.</exception>
    public static FieldResult<SqliteConnection> OpenToRead(string path)
    {
        try
        {
            return LogPath.Refusal(path, mustExist: true) is { } refusal ? refusal : Opened(path, connection =>
            {
                RefuseReadOnly(connection);
                LogSql.Run(connection, "PRAGMA query_only = ON");
                return IdentifyAtOnce(connection, path, out var version) ?? (version == 0 ? LogPath.Nothing(path) : null);
            });
        }
        catch (SqliteException error) when (!LogFaults.IsUnwritablePlace(error))
        {
            return LogFaults.Unread(error, path);
        }
    }

    /// <summary>Tells a log from other files.</summary>
    /// <param name="connection">Connection to it.</param>
    /// <param name="path">File.</param>
    /// <param name="version">How many steps of the schema it has; 0 where it is empty.</param>
    /// <returns>Why it is none; none where it is one.</returns>
    private static FieldDiagnostic? Identify(SqliteConnection connection, string path, out int version)
    {
        var (id, found) = (LogSql.Number(connection, "PRAGMA application_id"), LogSql.Number(connection, "PRAGMA user_version"));
        var isEmpty = LogSql.Number(connection, "SELECT count(*) FROM sqlite_schema") == 0;
        version = (int)Math.Clamp(found, 0, LogSchema.Version);
        return (id == LogSchema.ApplicationId, isEmpty) switch
        {
            (false, true) => null,
            (false, false) => LogFaults.Foreign(path),
            _ when found > LogSchema.Version => LogFaults.Newer(path, found),
            _ when found < 1 => LogFaults.Damaged(path, FormattableString.Invariant($"it has version {found}, which no StudioKit writes.")),
            _ => null,
        };
    }

    // Somebody else may be starting the log between one question and the next.
    private static FieldDiagnostic? IdentifyAtOnce(SqliteConnection connection, string path, out int version)
    {
        using var transaction = connection.BeginTransaction(deferred: true);
        return Identify(connection, path, out version);
    }

    private static FieldResult<SqliteConnection> Opened(string path, Func<SqliteConnection, FieldDiagnostic?> prepare)
    {
        // The whole path: a name alone could mean something else to SQLite.
        var source = new SqliteConnectionStringBuilder { DataSource = Path.GetFullPath(path), Mode = SqliteOpenMode.ReadWrite, Pooling = false };
        var connection = new SqliteConnection(source.ToString());
        var isReady = false;
        try
        {
            connection.Open();
            var refusal = prepare(connection);
            isReady = refusal is null;
            return refusal is null ? connection : refusal;
        }
        finally
        {
            if (!isReady)
            {
                connection.Dispose();
            }
        }
    }

    // Read where it lies, a read-only log would leave the files of its journal behind.
    private static void RefuseReadOnly(SqliteConnection connection)
    {
        if (raw.sqlite3_db_readonly(connection.Handle, "main") != 0)
        {
            throw new SqliteException("The file is read-only.", raw.SQLITE_READONLY);
        }
    }

    // Creation and migration run under the one lock for writing, and the version is read again inside it.
    private static FieldDiagnostic? Prepare(SqliteConnection connection, string path)
    {
        if (IdentifyAtOnce(connection, path, out var version) is { } refusal)
        {
            return refusal;
        }

        if (version < LogSchema.Version && Migrate(connection, path) is { } fault)
        {
            return fault;
        }

        LogSql.Run(connection, "PRAGMA journal_mode = WAL");
        LogSql.Run(connection, "PRAGMA synchronous = FULL");
        LogSql.Run(connection, "PRAGMA foreign_keys = ON");
        return null;
    }

    // A log without records. It is made in memory, so that no disk can be too full for half of it.
    private static byte[] Fresh(string path)
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        Migrate(connection, path);
        return LogSql.Contents(connection);
    }

    private static FieldDiagnostic? Migrate(SqliteConnection connection, string path)
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        if (Identify(connection, path, out var version) is { } refusal)
        {
            return refusal;
        }

        for (var step = version; step < LogSchema.Version; step++)
        {
            LogSql.Run(connection, LogSchema.Steps[step]);
        }

        SealAndLabel(connection);
        LogSql.Run(connection, FormattableString.Invariant($"PRAGMA user_version = {LogSchema.Version}"));
        LogSql.Run(connection, FormattableString.Invariant($"PRAGMA application_id = {LogSchema.ApplicationId}"));
        transaction.Commit();
        return null;
    }

    private static void SealAndLabel(SqliteConnection connection)
    {
        var labels = new LogLabels(connection);
        foreach (var table in LogSchema.Tables)
        {
            // All of them before the first is changed.
            foreach (var (row, body, _) in table.Rows(connection).ToList())
            {
                LogSql.Run(connection, $"UPDATE {table.Name} SET seal = $a WHERE rowid = $b", body.Seal, row);
                labels.Of(table.Kind, body.Id);
            }
        }
    }
}
