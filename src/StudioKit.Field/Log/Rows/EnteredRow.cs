using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Rows;

/// <summary>One row, read by the names of its columns, with the faults found in it.</summary>
internal sealed class EnteredRow(string file, IReadOnlyList<string> head, IReadOnlyList<CsvField> fields, List<FieldDiagnostic> faults)
{
    public string this[string column] => Field(column) is { } field ? SpreadsheetGuard.Off(field.Text) : "";

    /// <summary>Whether a cell has anything in it.</summary>
    public bool Has(string column) => this[column].Length > 0;

    /// <summary>Notes a fault of a cell.</summary>
    public void Fault(string column, string code, string message, string hint = "")
    {
        var field = Field(column) ?? fields[0];
        faults.Add(new FieldDiagnostic(code, FormattableString.Invariant($"{file}({field.Line},{field.Column})"), $"{column}: {message}", hint));
    }

    /// <summary>Notes what the rules of the log find wrong with a record that the row made.</summary>
    public void Fault(FieldDiagnostic rule) =>
        faults.Add(rule with { Subject = FormattableString.Invariant($"{file}({fields[0].Line})"), Message = $"{rule.Subject}: {rule.Message}" });

    private CsvField? Field(string column)
    {
        for (var i = 0; i < head.Count && i < fields.Count; i++)
        {
            if (head[i] == column)
            {
                return fields[i];
            }
        }

        return null;
    }
}
