using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>The record of the field: one SQLite file.</summary>
/// <remarks>
/// Every save is acknowledged only once it is on the disk. The journal is written ahead (WAL) and synchronised in full at each commit, so a record
/// survives a killed process and a power cut; the rollback journal at the same setting could lose the last commit to a power cut when its deletion
/// has not reached the disk. Closing the log folds the journal back, so that one file is left; after a crash the file with the
/// ending <c>-wal</c> belongs to it and is folded in at the next opening. Each change is kept with what was there before, and can be taken back.
/// </remarks>
public sealed class FieldLog : IDisposable
{
    private readonly SqliteConnection _connection;
    private readonly string _path;
    private readonly TimeProvider _time;
    private readonly Func<string> _newId;
    private readonly LogHistory _history;
    private readonly LogCopy? _copy;

    // What was found of the rows when they were read last; none since a change.
    private LogSeals? _seals;

    private FieldLog(SqliteConnection connection, string path, TimeProvider time, Func<string> newId, LogCopy? copy)
    {
        (_connection, _path, _time, _newId, _copy) = (connection, path, time, newId, copy);
        _history = new LogHistory(connection, time, path);
    }

    /// <summary>Called whenever a change has been written for good; nothing happens where nobody asks.</summary>
    public Action Written { get; set; } = () => { };

    /// <summary>Opens a log, or starts one where there is no file. A log of an earlier version is brought to this one.</summary>
    /// <param name="path">File.</param>
    /// <param name="time">Clock that holds and dates are judged by.</param>
    /// <param name="newId">Gives identifiers that are unique for good.</param>
    /// <returns>The log, or why it cannot be opened.</returns>
    public static FieldResult<FieldLog> Open(string path, TimeProvider time, Func<string> newId) => OpenToWrite(path, time, newId, LogStart.WhereMissing);

    /// <summary>Opens a log that is there already; a mistyped name starts no log.</summary>
    /// <inheritdoc cref="Open" path="/param"/>
    /// <returns>The log, or why it cannot be opened.</returns>
    public static FieldResult<FieldLog> OpenExisting(string path, TimeProvider time, Func<string> newId) => OpenToWrite(path, time, newId, LogStart.Never);

    /// <summary>Opens a log for reading. Nothing is changed, a log of an earlier version stays what it is, and the file and its folder may be read-only.</summary>
    /// <param name="path">File.</param>
    /// <param name="time">Clock that holds are judged by.</param>
    /// <returns>The log, or why it cannot be opened.</returns>
    public static FieldResult<FieldLog> OpenToRead(string path, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(time);
        LogCopy? copy = null;
        FieldResult<SqliteConnection> opened;
        try
        {
            opened = LogFile.OpenToRead(path);
        }
        catch (SqliteException)
        {
            // SQLite wants to write beside the file even to read it; a copy is read where it may not.
            var made = LogCopy.Of(path);
            if (!made.IsSound)
            {
                return FieldResult<FieldLog>.Refused(made.Diagnostics);
            }

            copy = made.Value;
            opened = copy.Open(path);
        }

        if (opened.IsSound)
        {
            return new FieldLog(opened.Value, path, time, () => "", copy);
        }

        copy?.Dispose();
        return FieldResult<FieldLog>.Refused(opened.Diagnostics);
    }

    /// <summary>Saves a session, new or changed.</summary>
    /// <param name="session">The session.</param>
    /// <returns>The session as kept, or what is wrong with it.</returns>
    public FieldResult<FieldSession> Save(FieldSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        var kept = session.Id.Length > 0 ? session : session with { Id = _newId() };
        return Kept(kept, LogSnapshot.Empty with { Sessions = [kept] });
    }

    /// <summary>Saves a subject, new or changed.</summary>
    /// <param name="subject">The subject.</param>
    /// <returns>The subject as kept, or what is wrong with it.</returns>
    public FieldResult<FieldSubject> Save(FieldSubject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        var kept = subject.Id.Length > 0 ? subject : subject with { Id = _newId() };
        return Kept(kept, LogSnapshot.Empty with { Subjects = [kept] });
    }

    /// <summary>Saves a frame, new or changed.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>The frame as kept, or what is wrong with it.</returns>
    public FieldResult<FieldFrame> Save(FieldFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return Kept(frame, LogSnapshot.Empty with { Frames = [frame] });
    }

    /// <summary>Saves a measurement, new or changed.</summary>
    /// <param name="measurement">The measurement.</param>
    /// <returns>The measurement as kept, or what is wrong with it.</returns>
    public FieldResult<FieldMeasurement> Save(FieldMeasurement measurement)
    {
        ArgumentNullException.ThrowIfNull(measurement);
        var kept = measurement.Id.Length > 0 ? measurement : measurement with { Id = _newId() };
        return Kept(kept, LogSnapshot.Empty with { Measurements = [kept] });
    }

    /// <summary>Saves many records as one change, all of them or nothing; those already here under the same identifier are changed.</summary>
    /// <param name="records">The records, each with an identifier.</param>
    /// <param name="action">What is done, as the history tells it.</param>
    /// <returns>What is wrong with them; empty where they were saved.</returns>
    public IReadOnlyList<FieldDiagnostic> Save(LogSnapshot records, LogAction action)
    {
        ArgumentNullException.ThrowIfNull(records);
        var faults = LogRules.Check(records, _time.GetUtcNow());
        return faults.Count > 0 ? faults : Changed(() => _history.Make(action, LogEdits.Puts(records)));
    }

    /// <summary>Moves a frame to another subject, or to another file name, and saves what else is new about it.</summary>
    /// <param name="id">Identifier that it has had.</param>
    /// <param name="frame">The frame as it shall be.</param>
    /// <returns>The frame as kept, or what is wrong with it.</returns>
    public FieldResult<FieldFrame> Move(string id, FieldFrame frame)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(frame);
        var faults = LogRules.Check(frame, _time.GetUtcNow());
        faults = faults.Count > 0 ? faults : Changed(() => _history.Make(LogAction.Edited, [new RowEdit(LogRecordKind.Frame, id, LogSchema.Frames.Body(frame))]));
        return faults.Count > 0 ? FieldResult<FieldFrame>.Refused(faults) : frame;
    }

    /// <summary>Takes a record out, with everything that belongs to it. The history keeps it, and an undo brings it back.</summary>
    /// <param name="id">Full identifier.</param>
    /// <returns>What was taken out, or why nothing was.</returns>
    public FieldResult<LogSnapshot> Delete(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        var going = Read().With(id);
        if (!going.Records.Any())
        {
            return new FieldDiagnostic("FLD471", id, "The log has no such record.");
        }

        var faults = Changed(() => _history.Make(LogAction.Deleted, LogEdits.Removals(going)));
        return faults.Count > 0 ? FieldResult<LogSnapshot>.Refused(faults) : going;
    }

    /// <summary>Takes the last change back that stands. What it undid can be made again with <see cref="Redo"/>, until something new is done.</summary>
    /// <returns>The change that was made, or why nothing was done.</returns>
    public FieldResult<LogChange> Undo() => Step(LogAction.Undone);

    /// <summary>Makes the change again that was taken back last.</summary>
    /// <returns>The change that was made, or why nothing was done.</returns>
    public FieldResult<LogChange> Redo() => Step(LogAction.Redone);

    /// <summary>All changes in order; what an earlier version recorded has none.</summary>
    /// <exception cref="DamagedLogException">The log is damaged.</exception>
    public IReadOnlyList<LogChange> History() => Reading(() => HasHistory ? _history.Read() : []);

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
    /// <exception cref="DamagedLogException">The log is damaged.</exception>
    public LogSnapshot Read() => Reading(() =>
    {
        using var transaction = _connection.BeginTransaction(deferred: true);
        return Snapshot();
    });

    /// <summary>What the records are called: short identifiers, names.</summary>
    /// <exception cref="DamagedLogException">The log is damaged.</exception>
    public LogIndex Index() => Reading(() =>
    {
        using var transaction = _connection.BeginTransaction(deferred: true);
        var log = Snapshot();
        return new LogIndex(log, HasHistory ? LogLabels.Read(_connection) : ShortLabel.For(log));
    });

    /// <summary>Takes in a snapshot, all of it or nothing; records already here under the same identifier are replaced.</summary>
    /// <param name="snapshot">What to take in.</param>
    /// <returns>What is wrong with it; empty where it was taken in.</returns>
    public IReadOnlyList<FieldDiagnostic> Import(LogSnapshot snapshot) => Save(snapshot, LogAction.Imported);

    /// <summary>What is wrong with the file: SQLite's own check, and rows that are not as they were written, those of the last reading if there was one. Empty where it is sound.</summary>
    public IReadOnlyList<string> CheckIntegrity()
    {
        try
        {
            return [.. LogSql.Texts(_connection, "PRAGMA integrity_check").Where(line => line != "ok"), .. (_seals ?? LogSeals.Of(_connection)).Broken];
        }
        catch (Exception error) when (error is SqliteException || LogFaults.IsOfDamage(error))
        {
            return [error.Message];
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _connection.Dispose();
        _copy?.Dispose();
    }

    private static FieldResult<FieldLog> OpenToWrite(string path, TimeProvider time, Func<string> newId, LogStart start)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(newId);
        var opened = LogFile.OpenToWrite(path, start);
        return opened.IsSound ? new FieldLog(opened.Value, path, time, newId, null) : FieldResult<FieldLog>.Refused(opened.Diagnostics);
    }

    private bool HasHistory => LogSql.Number(_connection, "PRAGMA user_version") > 1;

    private LogSnapshot Snapshot()
    {
        _seals = null;
        var seals = new LogSeals();
        var log = new LogSnapshot(
            LogSchema.Sessions.Read(_connection, seals), LogSchema.Subjects.Read(_connection, seals), LogSchema.Frames.Read(_connection, seals),
            LogSchema.Measurements.Read(_connection, seals));
        _seals = seals;
        return log;
    }

    private FieldResult<T> Kept<T>(T record, LogSnapshot records)
        where T : class
    {
        var faults = Save(records, LogAction.Recorded);
        return faults.Count > 0 ? FieldResult<T>.Refused(faults) : record;
    }

    private FieldResult<FieldSubject> SaveIfSound(FieldResult<FieldSubject> changed) => changed.IsSound ? Save(changed.Value) : changed;

    private FieldResult<LogChange> Step(LogAction action)
    {
        var faults = Changed(() => _history.Step(action));
        return faults.Count > 0 ? FieldResult<LogChange>.Refused(faults) : Reading(_history.Last);
    }

    private IReadOnlyList<FieldDiagnostic> Changed(Func<FieldDiagnostic?> change)
    {
        _seals = null;
        try
        {
            if (change() is { } refusal)
            {
                return [refusal];
            }

            Written();
            return [];
        }
        catch (SqliteException error)
        {
            return [LogFaults.Unwritten(error, _path)];
        }
        catch (Exception error) when (LogFaults.IsOfDamage(error))
        {
            return [LogFaults.Damaged(_path, error.Message.TrimEnd('.') + ".")];
        }
    }

    private T Reading<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (SqliteException error)
        {
            throw new DamagedLogException(LogFaults.Unread(error, _path), error);
        }
        catch (Exception error) when (LogFaults.IsOfDamage(error))
        {
            throw new DamagedLogException(LogFaults.Damaged(_path, error.Message.TrimEnd('.') + "."), error);
        }
    }
}
