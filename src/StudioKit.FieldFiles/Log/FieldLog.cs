using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>The record of the field: one SQLite file.</summary>
/// <remarks>
/// Every save is acknowledged only once it is on the disk. The journal is written ahead (WAL) and synchronised in full at each commit, so a record
/// survives a killed process and a power cut; the rollback journal at the same setting could lose the last commit to a power cut when its deletion
/// has not reached the disk. Closing the log folds the journal back, so that one file is left; after a crash the file with the
/// ending <c>-wal</c> belongs to it and is folded in at the next opening.
/// </remarks>
public sealed class FieldLog : IDisposable
{
    private const int NotADatabase = 26;
    private const int Corrupt = 11;
    private const int ForeignKeyBroken = 19;
    private readonly SqliteConnection _connection;
    private readonly TimeProvider _time;
    private readonly Func<string> _newId;

    private FieldLog(SqliteConnection connection, TimeProvider time, Func<string> newId)
    {
        _connection = connection;
        _time = time;
        _newId = newId;
    }

    /// <summary>Opens a log, or starts one where there is no file.</summary>
    /// <param name="path">File.</param>
    /// <param name="time">Clock that holds and dates are judged by.</param>
    /// <param name="newId">Gives identifiers that are unique for good.</param>
    /// <returns>The log, or why it cannot be opened.</returns>
    public static FieldResult<FieldLog> Open(string path, TimeProvider time, Func<string> newId)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(newId);
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        try
        {
            connection.Open();
            if (Prepare(connection, path) is { } refusal)
            {
                connection.Dispose();
                return refusal;
            }

            return new FieldLog(connection, time, newId);
        }
        catch (SqliteException error)
        {
            connection.Dispose();
            return error.SqliteErrorCode is NotADatabase or Corrupt
                ? new FieldDiagnostic("FLD451", path, "This is not a field log, or it is damaged.")
                : new FieldDiagnostic("FLD452", path, "The log cannot be opened: " + error.Message);
        }
    }

    /// <summary>Saves a session, new or changed.</summary>
    /// <param name="session">The session.</param>
    /// <returns>The session as kept, or what is wrong with it.</returns>
    public FieldResult<FieldSession> Save(FieldSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        var kept = session.Id.Length > 0 ? session : session with { Id = _newId() };
        return Save(kept, LogRules.Check(kept, _time.GetUtcNow()), LogSchema.Sessions);
    }

    /// <summary>Saves a subject, new or changed.</summary>
    /// <param name="subject">The subject.</param>
    /// <returns>The subject as kept, or what is wrong with it.</returns>
    public FieldResult<FieldSubject> Save(FieldSubject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        var kept = subject.Id.Length > 0 ? subject : subject with { Id = _newId() };
        return Save(kept, LogRules.Check(kept, _time.GetUtcNow()), LogSchema.Subjects);
    }

    /// <summary>Saves a frame, new or changed.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>The frame as kept, or what is wrong with it.</returns>
    public FieldResult<FieldFrame> Save(FieldFrame frame) => Save(frame, LogRules.Check(frame, _time.GetUtcNow()), LogSchema.Frames);

    /// <summary>Saves a measurement, new or changed.</summary>
    /// <param name="measurement">The measurement.</param>
    /// <returns>The measurement as kept, or what is wrong with it.</returns>
    public FieldResult<FieldMeasurement> Save(FieldMeasurement measurement)
    {
        ArgumentNullException.ThrowIfNull(measurement);
        var kept = measurement.Id.Length > 0 ? measurement : measurement with { Id = _newId() };
        return Save(kept, LogRules.Check(kept), LogSchema.Measurements);
    }

    /// <summary>Notes that an animal was taken up now.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="limit">Most time it may be held.</param>
    public FieldResult<FieldSubject> StartHold(FieldSubject subject, TimeSpan limit)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return SaveIfSound(subject.TakenUp(_time.GetLocalNow(), limit));
    }

    /// <summary>Notes that an animal was let go now.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="released">Whether it was released where it was found.</param>
    public FieldResult<FieldSubject> StopHold(FieldSubject subject, bool released)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return SaveIfSound(subject.LetGo(_time.GetLocalNow(), released));
    }

    /// <summary>How long an animal has been held.</summary>
    /// <param name="subject">The subject.</param>
    /// <returns>The status; none where it never was held.</returns>
    public HoldStatus? Hold(FieldSubject subject) => HoldStatus.Of(subject, _time.GetUtcNow());

    /// <summary>Everything in the log.</summary>
    public LogSnapshot Read()
    {
        using var transaction = _connection.BeginTransaction(deferred: true);
        return new LogSnapshot(
            LogSchema.Sessions.Read(_connection), LogSchema.Subjects.Read(_connection),
            LogSchema.Frames.Read(_connection), LogSchema.Measurements.Read(_connection));
    }

    /// <summary>Takes in a snapshot, all of it or nothing; records already here under the same identifier are replaced.</summary>
    /// <param name="snapshot">What to take in.</param>
    /// <returns>What is wrong with it; empty where it was taken in.</returns>
    public IReadOnlyList<FieldDiagnostic> Import(LogSnapshot snapshot)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        var faults = LogRules.Check(snapshot, _time.GetUtcNow());
        return faults.Count > 0 ? faults : TakeIn(snapshot);
    }

    /// <summary>What SQLite's own check finds wrong with the file; empty where it is sound.</summary>
    public IReadOnlyList<string> CheckIntegrity() => [.. Query(_connection, "PRAGMA integrity_check").Where(line => line != "ok")];

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    private static FieldDiagnostic? Prepare(SqliteConnection connection, string path)
    {
        var id = int.Parse(Query(connection, "PRAGMA application_id")[0], CultureInfo.InvariantCulture);
        var version = int.Parse(Query(connection, "PRAGMA user_version")[0], CultureInfo.InvariantCulture);
        var isEmpty = Query(connection, "SELECT count(*) FROM sqlite_schema")[0] == "0";
        if (id != LogSchema.ApplicationId && !isEmpty)
        {
            return new FieldDiagnostic("FLD451", path, "This is a database of another program.");
        }

        if (version > LogSchema.Steps.Length)
        {
            return new FieldDiagnostic("FLD453", path, $"The log has version {version}; this program knows versions up to {LogSchema.Steps.Length}.");
        }

        Query(connection, "PRAGMA journal_mode = WAL");
        Query(connection, "PRAGMA synchronous = FULL");
        Query(connection, "PRAGMA foreign_keys = ON");
        for (; version < LogSchema.Steps.Length; version++)
        {
            using var transaction = connection.BeginTransaction();
            Query(connection, LogSchema.Steps[version]);
            Query(connection, $"PRAGMA user_version = {version + 1}");
            Query(connection, $"PRAGMA application_id = {LogSchema.ApplicationId}");
            transaction.Commit();
        }

        return null;
    }

    private static List<string> Query(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var values = new List<string>();
        while (reader.Read())
        {
            values.Add(reader.GetString(0));
        }

        return values;
    }

    private static FieldDiagnostic Refused(SqliteException error, string subject) => error.SqliteErrorCode == ForeignKeyBroken
        ? new FieldDiagnostic("FLD454", subject, "It belongs to a session or subject that is not in the log.")
        : new FieldDiagnostic("FLD455", subject, "The log cannot be written: " + error.Message);

    private FieldResult<FieldSubject> SaveIfSound(FieldResult<FieldSubject> changed) => changed.IsSound ? Save(changed.Value) : changed;

    private FieldResult<T> Save<T>(T record, IReadOnlyList<FieldDiagnostic> faults, LogTable<T> table)
        where T : class
    {
        if (faults.Count > 0)
        {
            return FieldResult<T>.Refused(faults);
        }

        try
        {
            table.Save(_connection, record);
            return record;
        }
        catch (SqliteException error)
        {
            return Refused(error, typeof(T).Name);
        }
    }

    private List<FieldDiagnostic> TakeIn(LogSnapshot snapshot)
    {
        try
        {
            using var transaction = _connection.BeginTransaction();
            snapshot.Sessions.ToList().ForEach(session => LogSchema.Sessions.Save(_connection, session));
            snapshot.Subjects.ToList().ForEach(subject => LogSchema.Subjects.Save(_connection, subject));
            snapshot.Frames.ToList().ForEach(frame => LogSchema.Frames.Save(_connection, frame));
            snapshot.Measurements.ToList().ForEach(measurement => LogSchema.Measurements.Save(_connection, measurement));
            transaction.Commit();
            return [];
        }
        catch (SqliteException error)
        {
            return [Refused(error, "import")];
        }
    }
}
