using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.Field.Calibration;

/// <summary>Readings as a table: <c>name,kind,flash,planned,measured,uncertainty</c>, the last three in stops.</summary>
public static class CalibrationReadings
{
    private static readonly string[] Head = ["name", "kind", "flash", "planned", "measured", "uncertainty"];

    private static readonly Dictionary<string, CalibrationReadingKind> Kinds = new(StringComparer.Ordinal)
    {
        ["flash-meter"] = CalibrationReadingKind.FlashMeter,
        ["panel-meter"] = CalibrationReadingKind.PanelMeter,
        ["white-margin"] = CalibrationReadingKind.WhiteMargin,
        ["card-in-frame"] = CalibrationReadingKind.CardInFrame,
    };

    /// <summary>Reads a table with its head.</summary>
    /// <param name="path">Name to report faults under.</param>
    /// <param name="text">The table as comma-separated text.</param>
    /// <param name="flashes">Names of the kit's flashes.</param>
    /// <returns>The readings in a list, or every row that is wrong.</returns>
    public static FieldResult<IReadOnlyList<CalibrationReading>> Parse(string path, string text, IReadOnlyCollection<string> flashes)
    {
        ArgumentNullException.ThrowIfNull(flashes);
        var rows = CsvText.Read(text);
        if (rows.Count == 0 || !rows[0].SequenceEqual(Head, StringComparer.Ordinal))
        {
            return new FieldDiagnostic("FLD204", path, "The first line must be: " + string.Join(',', Head));
        }

        var (readings, faults) = (new List<CalibrationReading>(), new List<FieldDiagnostic>());
        foreach (var (row, line) in rows.Skip(1).Select((row, i) => (row, i + 2)))
        {
            if (Reading(row) is not { } reading)
            {
                faults.Add(new FieldDiagnostic("FLD205", $"{path}({line})", "A reading has six fields, the last three numbers in stops.", "Kinds: " + string.Join(", ", Kinds.Keys)));
            }
            else if (!flashes.Contains(reading.Flash, StringComparer.Ordinal))
            {
                faults.Add(new FieldDiagnostic("FLD206", $"{path}({line})", $"The kit has no flash '{reading.Flash}'.", "It has: " + string.Join(", ", flashes)));
            }
            else
            {
                readings.Add(reading);
            }
        }

        return faults.Count > 0
            ? FieldResult<IReadOnlyList<CalibrationReading>>.Refused(faults)
            : FieldResult<IReadOnlyList<CalibrationReading>>.Sound(readings, []);
    }

    private static CalibrationReading? Reading(string[] row) =>
        row.Length == Head.Length && Kinds.TryGetValue(row[1], out var kind)
        && TryNumber(row[3], out var planned) && TryNumber(row[4], out var measured) && TryNumber(row[5], out var uncertainty)
            ? new CalibrationReading(row[0], kind, row[2], planned, measured, uncertainty)
            : null;

    private static bool TryNumber(string text, out double value) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
}
