using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Tables;

namespace StudioKit.Field.Calibration;

/// <summary>One line of a table of readings, cell by cell, with what is wrong about it.</summary>
internal sealed class FieldReadingRow(string place, string[] head, IReadOnlyList<CsvField> cells, List<FieldDiagnostic> faults)
{
    public string Place { get; } = place;

    public List<FieldDiagnostic> Faults { get; } = faults;

    /// <summary>Whether every cell belongs to a column.</summary>
    public bool IsWhole => cells.Skip(head.Length).All(cell => cell.Text.Length == 0);

    /// <summary>What somebody typed, to be shown: at no length, and without what a terminal would obey.</summary>
    public static string Shown(string text)
    {
        const int Most = 60;
        var plain = string.Concat(text.Take(Most).Select(letter => char.IsControl(letter) || char.GetUnicodeCategory(letter) is UnicodeCategory.Format or UnicodeCategory.Surrogate ? '?' : letter));
        return text.Length > Most ? plain + "..." : plain;
    }

    public string Text(string column)
    {
        var index = Array.IndexOf(head, column);
        return index < 0 || index >= cells.Count ? "" : cells[index].Text;
    }

    public T Choice<T>(string column, Dictionary<string, T> known)
    {
        var text = Text(column);
        if (!known.TryGetValue(text, out var value))
        {
            var nearest = NearestName.Of(text, known.Keys);
            Fault(column, $"'{Shown(text)}' is unknown.", nearest is null ? "Known: " + string.Join(", ", known.Keys) : $"Did you mean '{nearest}'?");
        }

        return value!;
    }

    /// <summary>A cell with a unit; none where it is empty, or wrong and told so.</summary>
    public T? Value<T>(string column, TryRead<T> read, bool isNeeded = false)
        where T : struct
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            Require(!isNeeded, column, "is missing.");
            return null;
        }

        if (read(text, out var value, out var problem))
        {
            return value;
        }

        Fault(column, text.Length > 60 ? $"'{Shown(text)}' cannot be read." : problem, "");
        return null;
    }

    /// <summary>What was read, in stops: against 1 lx·s for a meter, above clipping for a picture.</summary>
    public double Measured(string column, CalibrationReadingKind kind, IsoSpeed iso) =>
        kind is CalibrationReadingKind.FlashMeter or CalibrationReadingKind.PanelMeter
            ? Metered(column, iso)
            : Value<Stops>(column, QuantityText.TryStops, isNeeded: true)?.Value ?? double.NaN;

    public void Require(bool holds, string column, string otherwise)
    {
        if (!holds)
        {
            Fault(column, otherwise, "");
        }
    }

    private double Metered(string column, IsoSpeed iso)
    {
        var text = Text(column);
        if (text.StartsWith("f/", StringComparison.OrdinalIgnoreCase))
        {
            var aperture = Value<FNumber>(column, QuantityText.TryFNumber);
            return aperture is { } n ? MeterReading.OfAperture(n, iso) : double.NaN;
        }

        if (text.StartsWith("EV", StringComparison.OrdinalIgnoreCase))
        {
            var value = Value<ExposureValue>(column, QuantityText.TryExposureValue);
            return value is { } ev ? MeterReading.OfExposureValue(ev) : double.NaN;
        }

        return LuxSeconds(column, text);
    }

    private double LuxSeconds(string column, string text)
    {
        var unit = Array.Find(["lx·s", "lx s", "lx*s", "lxs"], candidate => text.EndsWith(candidate, StringComparison.Ordinal));
        if (unit is not null && double.TryParse(text[..^unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && double.IsFinite(value) && value > 0)
        {
            return MeterReading.OfLuxSeconds(value);
        }

        Fault(column, $"'{Shown(text)}' is no meter reading.", "Write it as '52 lx·s', 'f/11' at the row's ISO, or 'EV 4.4'.");
        return double.NaN;
    }

    private void Fault(string column, string message, string hint) => Faults.Add(new FieldDiagnostic("FLD205", Place, $"{column}: {message}", hint));
}
