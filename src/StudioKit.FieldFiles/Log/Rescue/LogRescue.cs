using StudioKit.Field;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Reads what can be read of a damaged log, row by row, and puts it into a new one. The damaged one is never written.</summary>
public static class LogRescue
{
    private const long LargestFile = 1_500_000_000;

    // Dates are judged by no clock here: one that ran ahead is no reason to lose a record.
    private static readonly DateTimeOffset Whenever = new(9000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Reads a damaged log.</summary>
    /// <param name="path">Its file; a journal beside it is read, too.</param>
    /// <returns>What is left of it, or why nothing is.</returns>
    public static FieldResult<RescuedLog> Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (LogPath.Refusal(path, mustExist: true) is { } refusal)
        {
            return refusal;
        }

        try
        {
            if (new FileInfo(path).Length > LargestFile)
            {
                return new FieldDiagnostic("FLD460", path, "This is larger than any field log.");
            }

            var rescued = Of(LogPages.Read(path));
            return rescued.Log.Records.Any() ? rescued : new FieldDiagnostic("FLD460", path, "Nothing in it can be read as a record of a field log.");
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return new FieldDiagnostic("FLD452", path, "The log cannot be read: " + error.Message);
        }
    }

    /// <summary>Writes what was read into a new log.</summary>
    /// <param name="rescued">What was read.</param>
    /// <param name="path">File of the new log; there must be none of its name.</param>
    /// <param name="time">Clock for the history.</param>
    /// <returns>Why it cannot be written; empty where it was.</returns>
    public static IReadOnlyList<FieldDiagnostic> Write(RescuedLog rescued, string path, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(rescued);
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(time);
        return RescueWriter.Write(rescued, path, time);
    }

    private static RescuedLog Of(LogPages pages)
    {
        var found = new FoundTables(pages);
        var notes = found.Notes;
        var history = new FoundHistory([.. found.Tables.GetValueOrDefault(FoundHistory.Table, []), .. found.Strays]);
        var hasSeals = HasSeals(found);
        var log = new LogSnapshot(
            new RecordRescue<FieldSession>(LogSchema.Sessions, found, history, hasSeals, notes).Records(session => session.Id, session => LogRules.Check(session, Whenever)),
            new RecordRescue<FieldSubject>(LogSchema.Subjects, found, history, hasSeals, notes).Records(subject => subject.Id, subject => LogRules.Check(subject, Whenever)),
            new RecordRescue<FieldFrame>(LogSchema.Frames, found, history, hasSeals, notes).Records(frame => frame.Id, frame => LogRules.Check(frame, Whenever)),
            new RecordRescue<FieldMeasurement>(LogSchema.Measurements, found, history, hasSeals, notes).Records(measurement => measurement.Id, LogRules.Check));
        log = StandIns.For(log, notes);
        if (pages.JournalIsCut)
        {
            notes.Add(new RescueNote(RescueNoteKind.JournalCut, "journal", ""));
        }

        if (pages.Version > LogSchema.Version)
        {
            notes.Add(new RescueNote(RescueNoteKind.LaterVersion, "log", FormattableString.Invariant($"{pages.Version}")));
        }

        if (!hasSeals)
        {
            notes.Add(new RescueNote(RescueNoteKind.NoSeals, "log", ""));
        }

        return new RescuedLog(log, notes)
        {
            Labels = found.Tables.GetValueOrDefault("label", []),
            Changes = found.Tables.GetValueOrDefault("change", []),
            ChangedRecords = [.. found.Tables.GetValueOrDefault(FoundHistory.Table, []).Where(FoundHistory.IsSound)],
        };
    }

    // Wherever one row of the history or one seal is left.
    private static bool HasSeals(FoundTables found) =>
        found.Tables.ContainsKey("label")
        || found.Strays.Any(FoundHistory.IsSound)
        || LogSchema.Tables.Any(table => found.Tables.GetValueOrDefault(table.Name, []).Concat(found.Strays).Any(row => IsSealed(table, row)));

    private static bool IsSealed(StoredRows table, FoundRow row) =>
        FileColumns.Fit(table.Name, row)
        && Array.IndexOf(FileColumns.Of(table.Name), StoredRows.SealColumn) is var at
        && at < row.Values.Length
        && row.Values[at] is string { Length: 16 } seal
        && seal.All(char.IsAsciiHexDigitLower);
}
