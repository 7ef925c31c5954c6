using StudioKit.Field;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Finds the records of one kind: what stands in its table as it was written, else the history's copy, else what is left.</summary>
internal sealed class RecordRescue<T>(LogTable<T> table, FoundTables found, FoundHistory history, bool hasSeals, List<RescueNote> notes)
    where T : class
{
    private readonly Dictionary<string, T> _records = new(StringComparer.Ordinal);

    /// <summary>The records in the order in which they were put in.</summary>
    /// <param name="id">Identifier of a record.</param>
    /// <param name="check">The rules.</param>
    public IReadOnlyList<T> Records(Func<T, string> id, Func<T, IReadOnlyList<FieldDiagnostic>> check)
    {
        if (!found.Tables.ContainsKey(table.Name))
        {
            notes.Add(new RescueNote(RescueNoteKind.TableMissing, table.Name, ""));
        }

        var rows = found.Tables.GetValueOrDefault(table.Name, []).Where(HasName).ToList();
        var strays = found.Strays.Where(row => FileColumns.Fit(table.Name, row) && HasName(row)).ToList();
        rows.Where(row => IsAsWritten(row) && !row.AmongUnreadable).ToList().ForEach(row => Add(row, null, id, check));
        history.Alive(table.Kind).ToList().ForEach(body => Add(body, RescueNoteKind.FromHistory, id, check));
        strays.Concat(rows.Where(row => row.AmongUnreadable)).Where(row => IsAsWritten(row) && !history.IsGone(table.Kind, (string)row.Values[0]!)).ToList().ForEach(row => Add(row, RescueNoteKind.FromOutside, id, check));
        rows.Where(row => !IsAsWritten(row)).ToList().ForEach(row => Add(row, RescueNoteKind.Doubtful, id, check));
        var order = rows.Where(row => row.Values[0] is string).GroupBy(row => (string)row.Values[0]!, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().RowId, StringComparer.Ordinal);
        return [.. _records.Values.OrderBy(record => order.GetValueOrDefault(id(record), long.MaxValue))];
    }

    private static bool HasName(FoundRow row) => row.Values is [string { Length: > 0 }, ..];

    private LogBody Body(FoundRow row)
    {
        var columns = FileColumns.Of(table.Name);
        return new LogBody([
            .. table.Columns.Where(column => Array.IndexOf(columns, column) < row.Values.Length)
                .Select(column => KeyValuePair.Create(column, row.Values[Array.IndexOf(columns, column)])),
        ]);
    }

    // In a log of the first version a row counts as written where it holds a record; in any other, one without its seal is cut short.
    private bool IsAsWritten(FoundRow row)
    {
        var at = Array.IndexOf(FileColumns.Of(table.Name), StoredRows.SealColumn);
        return at < row.Values.Length ? row.Values[at] as string == Body(row).Seal : !hasSeals && Read(Body(row)) is { Record: not null, Repairs.Count: 0 };
    }

    private void Add(FoundRow row, RescueNoteKind? origin, Func<T, string> id, Func<T, IReadOnlyList<FieldDiagnostic>> check) => Add(Body(row), origin, id, check);

    private void Add(LogBody body, RescueNoteKind? origin, Func<T, string> id, Func<T, IReadOnlyList<FieldDiagnostic>> check)
    {
        if (Read(body) is not { Record: { } record } read)
        {
            notes.Add(new RescueNote(RescueNoteKind.RowsUnreadable, table.Name, "1"));
            return;
        }

        if (_records.ContainsKey(id(record)))
        {
            return;
        }

        if (check(record) is [var fault, ..])
        {
            notes.Add(new RescueNote(RescueNoteKind.AgainstRules, id(record), $"{fault.Message} {body.Text}"));
            return;
        }

        _records.Add(id(record), record);
        notes.AddRange(read.Repairs.Select(repair => new RescueNote(RescueNoteKind.ValueLeftOut, id(record), repair)));
        if (origin is { } kind)
        {
            notes.Add(new RescueNote(kind, id(record), ""));
        }
    }

    // Each strange value gives way to a safe one, until the row holds a record.
    private (T? Record, List<string> Repairs) Read(LogBody body)
    {
        var repairs = new List<string>();
        for (var tries = 0; tries <= body.Values.Count; tries++)
        {
            try
            {
                return (table.Record(body), repairs);
            }
            catch (LogValueException fault) when (!IsReference(fault.Column))
            {
                repairs.Add(fault.Message);
                body = body.With(fault.Column, Safe(fault, body));
            }
            catch (FormatException)
            {
                return (null, repairs);
            }
        }

        return (null, repairs);
    }

    private static bool IsReference(string column) => column is "id" or "session_id" or "subject_id" or "file_name";

    private static object? Safe(LogValueException fault, LogBody body) => fault.Column switch
    {
        "start" => StandIns.Day(body["id"] as string ?? "").ToString(),
        "basis_of_record" => "HumanObservation",
        _ => fault.Safe,
    };
}
