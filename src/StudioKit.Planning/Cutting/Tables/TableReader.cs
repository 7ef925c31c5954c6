using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning.Tables;
using UnitsNet;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>Reads one table row by row and collects what is wrong with it.</summary>
internal sealed class TableReader
{
    private const int MostFaults = 50;

    private readonly string _file;
    private readonly string[] _lines;
    private readonly IReadOnlyList<IReadOnlyList<CsvField>> _rows;
    private readonly List<Diagnostic> _faults = [];
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);
    private IReadOnlyList<CsvField> _row = [];
    private int _pieces;

    private TableReader(string file, string text)
    {
        _file = file;
        _lines = text.Split('\n');
        _rows = CsvText.Read(text);
    }

    /// <summary>Reads a table.</summary>
    /// <param name="file">The file's name, for the diagnostics.</param>
    /// <param name="text">Its text.</param>
    /// <param name="required">Columns that must be there.</param>
    /// <param name="optional">Columns that may be there.</param>
    /// <param name="toRow">Makes a row of the fields at hand.</param>
    public static CutTable<T> Read<T>(string file, string text, string[] required, string[] optional, Func<TableReader, T> toRow)
    {
        if (text.Length > CutTables.MostBytes)
        {
            return new CutTable<T>([], [TooLong(file)]);
        }

        var reader = new TableReader(file, text);
        var rows = new List<T>();
        if (reader.ReadHead(required, optional))
        {
            for (var r = 1; r < reader._rows.Count && reader._faults.Count < MostFaults; r++)
            {
                reader._row = reader._rows[r];
                if (reader.HasEveryField())
                {
                    rows.Add(toRow(reader));
                }
            }
        }

        return new CutTable<T>(reader._faults.Count == 0 ? rows : [], reader._faults);
    }

    public string Label(string fallback) => Field("label") is { Text.Length: > 0 } field ? field.Text : fallback;

    public string Text(string column) => Field(column)?.Text ?? "";

    public Length Length(string column)
    {
        var field = Field(column)!;
        if (!QuantityText.TryLength(field.Text, out var length, out var problem))
        {
            Fault(field, DiagnosticCodes.UnreadableValue, problem, null);
        }
        else if (length.Millimeters is < 0.1 or > 1e6)
        {
            Fault(field, DiagnosticCodes.OutOfRange, $"'{field.Text}' is no length to cut.", "Write a length from 0.1 mm to 1000 m.");
        }

        return length;
    }

    public int? Count(int lowest)
    {
        if (Field("count") is not { Text.Length: > 0 } field)
        {
            return null;
        }

        if (!int.TryParse(field.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count < lowest || count > CutTables.MostPieces)
        {
            Fault(
                field,
                DiagnosticCodes.UnreadableValue,
                $"'{field.Text}' is no count.",
                FormattableString.Invariant($"Write a whole number from {lowest} to {CutTables.MostPieces}, or leave the field empty."));
        }

        return count;
    }

    /// <summary>How many pieces the row asks for, one where it does not say; all rows together may ask for so many.</summary>
    public int Pieces()
    {
        var count = Count(1) ?? 1;
        var before = _pieces;
        _pieces = Math.Min(CutTables.MostPieces, before) + Math.Clamp(count, 0, CutTables.MostPieces);
        if (before <= CutTables.MostPieces && _pieces > CutTables.MostPieces)
        {
            Fault(_row[0], DiagnosticCodes.TooMuch, "The table asks for more pieces than any honest cut list.", FormattableString.Invariant($"Keep it to {CutTables.MostPieces} pieces in all."));
        }

        return count;
    }

    public decimal Price()
    {
        if (Field("price") is not { Text.Length: > 0 } field)
        {
            return 0;
        }

        if (!decimal.TryParse(field.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var price) || price > 1_000_000_000)
        {
            Fault(field, DiagnosticCodes.UnreadableValue, $"'{field.Text}' is no price.", "Write a number such as 12.50, without a currency.");
        }

        return price;
    }

    public bool MayTurn()
    {
        var field = Field("turn");
        if (field is null || field.Text is "" or "yes" or "no")
        {
            return field?.Text != "no";
        }

        Fault(field, DiagnosticCodes.UnreadableValue, $"'{field.Text}' does not say whether the piece may turn.", "Write yes or no.");
        return true;
    }

    private static Diagnostic TooLong(string file) => new(
        DiagnosticCodes.TooMuch,
        DiagnosticSeverity.Error,
        file,
        1,
        1,
        "The table is longer than any honest cut list.",
        FormattableString.Invariant($"Keep it under {CutTables.MostBytes} characters."),
        "");

    private CsvField? Field(string column) => _columns.TryGetValue(column, out var index) ? _row[index] : null;

    private bool ReadHead(string[] required, string[] optional)
    {
        if (_rows.Count < 2)
        {
            Fault(new CsvField("", 1, 1), DiagnosticCodes.Empty, "The table has no rows.", $"Start with a line {Head(required, optional)}.");
            return false;
        }

        for (var i = 0; i < _rows[0].Count; i++)
        {
            var field = _rows[0][i];
            if (!required.Concat(optional).Contains(field.Text, StringComparer.OrdinalIgnoreCase))
            {
                Fault(field, DiagnosticCodes.UnknownKey, $"'{field.Text}' is no column of this table.", $"Columns are {Head(required, optional)}.");
            }
            else if (!_columns.TryAdd(field.Text, i))
            {
                Fault(field, DiagnosticCodes.DuplicateKey, $"Column '{field.Text}' stands twice.", null);
            }
        }

        foreach (var missing in required.Where(column => !_columns.ContainsKey(column)))
        {
            Fault(_rows[0][0], DiagnosticCodes.MissingKey, $"Column '{missing}' is missing.", $"Columns are {Head(required, optional)}.");
        }

        return _faults.Count == 0;
    }

    private static string Head(string[] required, string[] optional) => string.Join(',', required.Concat(optional));

    private bool HasEveryField()
    {
        if (_row.Count == _rows[0].Count)
        {
            return true;
        }

        Fault(
            _row[0],
            DiagnosticCodes.WrongShape,
            FormattableString.Invariant($"The row has {_row.Count} fields, the head {_rows[0].Count}."),
            "A decimal comma splits a field: write a decimal point.");
        return false;
    }

    private void Fault(CsvField field, string code, string message, string? hint) => _faults.Add(new Diagnostic(
        code, DiagnosticSeverity.Error, _file, field.Line, field.Column, message, hint, _lines.ElementAtOrDefault(field.Line - 1)?.TrimEnd('\r') ?? ""));
}
