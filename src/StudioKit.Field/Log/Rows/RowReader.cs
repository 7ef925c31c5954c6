using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Rows;

/// <summary>Reads a log written in rows: comma-separated text, one row an animal or a run of its pictures.</summary>
/// <remarks>
/// With a head, columns may come in any order and be left out; without one they are the boxes of the printed sheet. Date, place, framing and set-up
/// hold until another is given, and a hyphen takes them back. A row that names no animal goes on with the one above it.
/// </remarks>
public static class RowReader
{
    private const int MostRows = 20_000;

    /// <summary>Reads rows into records, all of them or none.</summary>
    /// <param name="name">Name of the file to report faults under.</param>
    /// <param name="text">The rows.</param>
    /// <param name="context">What they are read against.</param>
    /// <returns>The new records; or every fault, each with its line and column.</returns>
    public static FieldResult<LogSnapshot> Read(string name, string text, RowContext context)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(context);
        if (Unreadable(name, text) is { } unreadable)
        {
            return unreadable;
        }

        var rows = CsvText.Read(text);
        if (rows.Count is 0 or > MostRows)
        {
            return new FieldDiagnostic("FLD490", name, rows.Count == 0 ? "There are no rows." : FormattableString.Invariant($"There are more than {MostRows} rows."));
        }

        var faults = new List<FieldDiagnostic>();
        var hasHead = rows[0].Any(field => field.Text == RowColumns.Animal || field.Text == RowColumns.Frames);
        var head = hasHead ? Head(name, rows[0], faults) : RowColumns.OnPaper;
        var entry = new RowEntry(context);
        foreach (var fields in rows.Skip(hasHead ? 1 : 0))
        {
            var row = new EnteredRow(name, head, fields, faults);
            if (fields.Count > head.Count && fields.Skip(head.Count).Any(field => field.Text.Length > 0))
            {
                row.Fault(head[0], "FLD491", FormattableString.Invariant($"the row has {fields.Count} cells for {head.Count} columns."), "Put a text with commas into quotation marks.");
            }
            else
            {
                entry.Add(row);
            }
        }

        return faults.Count > 0 ? FieldResult<LogSnapshot>.Refused(faults) : entry.Snapshot;
    }

    // Spreadsheets save in 8-bit codings and with other separators, each by its own settings; what comes out of that must not pass for rows.
    private static FieldDiagnostic? Unreadable(string name, string text)
    {
        var lost = text.IndexOf('\uFFFD', StringComparison.Ordinal);
        if (lost >= 0)
        {
            var line = 1 + text.AsSpan(0, lost).Count('\n');
            return new FieldDiagnostic("FLD499", FormattableString.Invariant($"{name}({line})"), "The file is not in UTF-8, so that letters would be lost.", "Save it as comma-separated text in UTF-8.");
        }

        var first = text.AsSpan().TrimStart();
        first = first.IndexOf('\n') is var end && end >= 0 ? first[..end] : first;
        var sign = first.Contains(',') ? "" : first.Contains(';') ? "semicolons" : first.Contains('\t') ? "tabs" : "";
        return sign.Length == 0 ? null : new FieldDiagnostic("FLD491", name, $"The cells are parted by {sign}.", "Save it with commas between them; within a cell, frames are parted by semicolons.");
    }

    private static List<string> Head(string name, IReadOnlyList<CsvField> fields, List<FieldDiagnostic> faults)
    {
        foreach (var (field, i) in fields.Select((field, i) => (field, i)))
        {
            if (!RowColumns.All.Contains(field.Text, StringComparer.Ordinal) || fields.Take(i).Any(before => before.Text == field.Text))
            {
                faults.Add(new FieldDiagnostic(
                    "FLD491", FormattableString.Invariant($"{name}({field.Line},{field.Column})"),
                    RowColumns.All.Contains(field.Text, StringComparer.Ordinal) ? $"The column '{field.Text}' is there twice." : $"There is no column '{field.Text}'.",
                    $"Columns are {string.Join(", ", RowColumns.All)}."));
            }
        }

        return [.. fields.Select(field => field.Text)];
    }
}
