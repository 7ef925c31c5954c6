using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>Makes changes to a log and keeps each with what was there before.</summary>
internal sealed class LogHistory(SqliteConnection connection, TimeProvider time, string path)
{
    /// <summary>Makes one change of many rows, all of it or nothing. A row that stays as it is, is no change.</summary>
    /// <returns>Why it cannot be made; none where it was made, or nothing was to do.</returns>
    public FieldDiagnostic? Make(LogAction action, IEnumerable<RowEdit> edits) => InOneGo(() =>
    {
        var (changes, labels) = (new List<StoredChange>(), new LogLabels(connection));
        foreach (var edit in edits)
        {
            if (Refusal(edit) is { } refusal)
            {
                return refusal;
            }

            if (Carried(edit, labels) is { } change)
            {
                changes.Add(change);
            }
        }

        var isEdit = action == LogAction.Recorded && changes.TrueForAll(change => change.Before is not null);
        Keep(isEdit ? LogAction.Edited : action, null, changes);
        return null;
    });

    /// <summary>Takes the last change back that stands, or makes the one again that was taken back last.</summary>
    /// <param name="action">Which of the two.</param>
    /// <returns>Why it cannot be done; none where it was.</returns>
    public FieldDiagnostic? Step(LogAction action) => InOneGo(() =>
    {
        var (undo, stack) = (action == LogAction.Undone, ChangeStack.Of(Heads().Select(head => (head.Number, head.Action))));
        if ((undo ? stack.Undoable : stack.Redoable) is not { } target)
        {
            return undo
                ? new FieldDiagnostic("FLD474", path, "There is nothing to take back.", "What an earlier version recorded has no history.")
                : new FieldDiagnostic("FLD474", path, "There is nothing to make again: no change was taken back since the last new one.");
        }

        var changes = Changes(target);
        var steps = undo ? changes.AsEnumerable().Reverse().Select(change => change.Reversed).ToList() : changes;
        foreach (var step in steps)
        {
            // Each as the one before has left it: one change may have touched a record twice.
            if (!Stands(step))
            {
                return new FieldDiagnostic("FLD475", path, $"{step.Kind} {step.ShortId} is not as the change left it; nothing was done.", "Another program has changed the log, or it is damaged.");
            }

            Carry(step);
        }

        Keep(action, target, steps);
        return null;
    });

    /// <summary>All changes in order, with what each did.</summary>
    public List<LogChange> Read()
    {
        var records = Changes(null).GroupBy(pair => pair.Change).ToDictionary(group => group.Key, group => group.Select(pair => pair.Row.ToRecord()).ToList());
        return [.. Heads().Select(head => new LogChange(head.Number, head.At, head.Action, head.Target, [.. records.GetValueOrDefault(head.Number) ?? []]))];
    }

    /// <summary>The last change, with what it did.</summary>
    public LogChange Last()
    {
        var head = Heads()[^1];
        return new LogChange(head.Number, head.At, head.Action, head.Target, [.. Changes(head.Number).Select(change => change.ToRecord())]);
    }

    private FieldDiagnostic? InOneGo(Func<FieldDiagnostic?> work)
    {
        using var transaction = connection.BeginTransaction(deferred: false);

        // Rows go and come in any order; what belongs to what is judged at the end.
        LogSql.Run(connection, "PRAGMA defer_foreign_keys = ON");
        var refusal = work();
        if (refusal is null)
        {
            transaction.Commit();
        }

        return refusal;
    }

    // A row under an identifier that is not its own may not push out another.
    private FieldDiagnostic? Refusal(RowEdit edit) =>
        edit is { BeforeId: { } before, After: { } after } && before != after.Id && LogSchema.Of(edit.Kind).Find(connection, after.Id) is not null
            ? new FieldDiagnostic("FLD476", after.Id, "A frame of this file is already with that subject.")
            : null;

    private StoredChange? Carried(RowEdit edit, LogLabels labels)
    {
        var table = LogSchema.Of(edit.Kind);
        var found = table.Find(connection, edit.BeforeId ?? edit.After!.Id);
        if (found?.Body.Text == edit.After?.Text)
        {
            return null;
        }

        var shortId = labels.Of(edit.Kind, found?.Body.Id ?? edit.After!.Id);
        var change = new StoredChange(edit.Kind, shortId, found?.RowId ?? 0, found?.Body, edit.After);
        Carry(change);
        return change with { RowId = found?.RowId ?? table.Find(connection, edit.After!.Id)!.Value.RowId };
    }

    private void Carry(StoredChange change)
    {
        var table = LogSchema.Of(change.Kind);
        if (change.Before is { } before && before.Id != change.After?.Id)
        {
            table.Remove(connection, before.Id);
        }

        if (change.After is { } after)
        {
            table.Put(connection, after, change.RowId > 0 ? change.RowId : null);
            LogLabels.Move(connection, change.ShortId, after.Id);
        }
    }

    private bool Stands(StoredChange change) => change.Before is { } before
        ? LogSchema.Of(change.Kind).Find(connection, before.Id)?.Body.Holds(before) ?? false
        : LogSchema.Of(change.Kind).Find(connection, change.After!.Id) is null;

    private void Keep(LogAction action, long? target, List<StoredChange> changes)
    {
        if (changes.Count == 0)
        {
            return;
        }

        LogSql.Run(connection, "INSERT INTO change (at, action, target) VALUES ($a, $b, $c)", time.GetLocalNow().ToString("O", CultureInfo.InvariantCulture), action.ToString(), target);
        var number = LogSql.Number(connection, "SELECT last_insert_rowid()");
        foreach (var (change, place) in changes.Select((change, place) => (change, place)))
        {
            LogSql.Run(
                connection, "INSERT INTO changed_record (change, place, kind, short_id, row, before, after, seal) VALUES ($a, $b, $c, $d, $e, $f, $g, $h)",
                number, place, change.Kind.ToString(), change.ShortId, change.RowId, change.Before?.Text, change.After?.Text, LogBody.SealOf(change.Before?.Text + change.After?.Text));
        }
    }

    private List<(long Number, DateTimeOffset At, LogAction Action, long? Target)> Heads()
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT number, at, action, target FROM change ORDER BY number";
        using var reader = command.ExecuteReader();
        var heads = new List<(long, DateTimeOffset, LogAction, long?)>();
        while (reader.Read())
        {
            heads.Add((
                reader.GetInt64(0),
                DateTimeOffset.ParseExact(reader.GetString(1), "O", CultureInfo.InvariantCulture),
                Enum.Parse<LogAction>(reader.GetString(2)),
                reader.IsDBNull(3) ? null : reader.GetInt64(3)));
        }

        return heads;
    }

    private List<StoredChange> Changes(long target) => [.. Changes((long?)target).Select(pair => pair.Row)];

    private List<(long Change, StoredChange Row)> Changes(long? target)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT change, kind, short_id, row, before, after FROM changed_record WHERE $change IS NULL OR change = $change ORDER BY change, place";
        command.Parameters.AddWithValue("$change", target ?? (object)DBNull.Value);
        using var reader = command.ExecuteReader();
        var changes = new List<(long, StoredChange)>();
        while (reader.Read())
        {
            changes.Add((reader.GetInt64(0), new StoredChange(
                Enum.Parse<LogRecordKind>(reader.GetString(1)), reader.GetString(2), reader.GetInt64(3), Body(reader, 4), Body(reader, 5))));
        }

        return changes;
    }

    private static LogBody? Body(SqliteDataReader reader, int place) => reader.IsDBNull(place) ? null : LogBody.Read(reader.GetString(place));
}
