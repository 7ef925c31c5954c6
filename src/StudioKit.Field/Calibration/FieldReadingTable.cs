using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Tables;
using UnitsNet;

namespace StudioKit.Field.Calibration;

/// <summary>Readings as comma-separated text: what was set, and what the meter or the picture said. Columns come in any order.</summary>
/// <example><code>
/// name,kind,flash,set-up,framing,power,distance,f-number,iso,reading
/// beneath at 1 m,flash-meter,sedge,,,1/1,1 m,,100,f/22
/// on the sheet,panel-meter,,white,,1/4,45 cm,,,32 lx·s
/// bare sheet,white-margin,,white,reed 55 at 1:2,1/8,45 cm,f/16,500,-0.4 stop
/// </code></example>
public static class FieldReadingTable
{
    private static readonly string[] Known =
        ["name", "kind", "flash", "set-up", "framing", "pitch", "power", "distance", "f-number", "iso", "reflectance", "reading", "uncertainty", "date"];

    private static readonly string[] Needed = ["name", "kind", "power", "reading"];

    private static readonly Dictionary<string, CalibrationReadingKind> Kinds = new(StringComparer.Ordinal)
    {
        ["flash-meter"] = CalibrationReadingKind.FlashMeter,
        ["panel-meter"] = CalibrationReadingKind.PanelMeter,
        ["white-margin"] = CalibrationReadingKind.WhiteMargin,
        ["card-in-frame"] = CalibrationReadingKind.CardInFrame,
    };

    /// <summary>Most bytes of a table [1].</summary>
    public const int MostBytes = 1024 * 1024;

    /// <summary>Most readings of a table [1]: an outing gives a dozen.</summary>
    public const int MostReadings = 2000;

    private const int MostFaults = 20;
    private const int MostLetters = 120;
    private const double LeastUncertainty = 0.01;
    private const double MostUncertainty = 5;

    // Full sunlight for a minute is some 23 stops over 1 lx·s, starlight for a second 10 under.
    private const double MostMeasured = 40;

    private static readonly Length Nearest = Length.FromMillimeters(1);
    private static readonly Length Furthest = Length.FromMeters(100);

    /// <summary>Reads a table with its head.</summary>
    /// <param name="path">Name to report faults under.</param>
    /// <param name="text">The table.</param>
    /// <returns>The readings, or every cell that is wrong with its line.</returns>
    public static FieldResult<IReadOnlyList<FieldReading>> Parse(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostBytes)
        {
            return new FieldDiagnostic("FLD215", path, $"The table is larger than {MostBytes / 1024} kB.", "Leave out what are not readings.");
        }

        var rows = CsvText.Read(text);
        if (rows.Count > MostReadings + 1)
        {
            return new FieldDiagnostic("FLD215", path, $"The table has {rows.Count - 1} readings; {MostReadings} are taken at most.", "Make a table for each outing.");
        }

        var head = rows.Count == 0 ? [] : rows[0].Select(column => column.Text).ToArray();
        var faults = HeadFaults(path, head).ToList();
        var readings = faults.Count > 0 ? [] : Read(path, head, rows.Skip(1), faults);
        return faults.Count > 0
            ? FieldResult<IReadOnlyList<FieldReading>>.Refused(Bounded(path, faults))
            : FieldResult<IReadOnlyList<FieldReading>>.Sound(readings, []);
    }

    private static List<FieldReading> Read(string path, string[] head, IEnumerable<IReadOnlyList<CsvField>> rows, List<FieldDiagnostic> faults)
    {
        var readings = new List<FieldReading>();
        foreach (var row in rows)
        {
            Read(new FieldReadingRow($"{path}({row[0].Line})", head, row, faults), readings);
        }

        return readings;
    }

    private static List<FieldDiagnostic> Bounded(string path, List<FieldDiagnostic> faults) => faults.Count <= MostFaults
        ? faults
        : [.. faults.Take(MostFaults), new FieldDiagnostic("FLD205", path, $"{faults.Count - MostFaults} more like these are left out here.")];

    private static IEnumerable<FieldDiagnostic> HeadFaults(string path, string[] head)
    {
        foreach (var column in Needed.Except(head, StringComparer.Ordinal))
        {
            yield return new FieldDiagnostic("FLD204", $"{path}(1)", $"The head has no column '{column}'.", "Columns: " + string.Join(", ", Known));
        }

        foreach (var column in head.GroupBy(column => column, StringComparer.Ordinal).Where(column => column.Count() > 1))
        {
            yield return new FieldDiagnostic("FLD204", $"{path}(1)", $"The head has the column '{Shown(column.Key)}' {column.Count()} times.");
        }

        foreach (var column in head.Except(Known, StringComparer.Ordinal))
        {
            var nearest = NearestName.Of(column, Known);
            yield return new FieldDiagnostic(
                "FLD204", $"{path}(1)", $"There is no column '{Shown(column)}'.", nearest is null ? "Columns: " + string.Join(", ", Known) : $"Did you mean '{nearest}'?");
        }
    }

    private static void Read(FieldReadingRow row, List<FieldReading> readings)
    {
        var before = row.Faults.Count;
        var kind = row.Choice("kind", Kinds);
        var power = row.Value<FlashPower>("power", QuantityText.TryPower, isNeeded: true);
        var distance = row.Value<Length>("distance", QuantityText.TryLength);
        var aperture = row.Value<FNumber>("f-number", QuantityText.TryFNumber);
        var iso = row.Value<IsoSpeed>("iso", QuantityText.TryIso);
        var pitch = row.Value<Angle>("pitch", QuantityText.TryAngle);
        var reflectance = row.Value<double>("reflectance", QuantityText.TryRatio) ?? 0.18;
        var uncertainty = row.Value<Stops>("uncertainty", QuantityText.TryStops)?.Value ?? UsualUncertainty(kind);
        var day = row.Value<DateOnly>("date", TryDay);
        var measured = row.Measured("reading", kind, iso ?? new IsoSpeed(100));
        row.Require(reflectance is > 0 and <= 1, "reflectance", "must lie above 0 and at most at 1.");
        row.Require(uncertainty is >= LeastUncertainty and <= MostUncertainty, "uncertainty", $"must lie from {LeastUncertainty} to {MostUncertainty} stops.");
        row.Require(double.IsNaN(measured) || Math.Abs(measured) <= MostMeasured, "reading", $"lies further than {MostMeasured} stops from 1 lx·s or from clipping; nothing is so bright or so dark.");
        row.Require(distance is not { } at || (at >= Nearest && at <= Furthest), "distance", "must lie from 1 mm to 100 m.");
        row.Require(row.IsWhole, "row", "has more cells than the head has columns.");
        row.Require(row.Text("name").Length <= MostLetters, "name", $"is longer than {MostLetters} characters.");
        if (row.Faults.Count == before)
        {
            readings.Add(new FieldReading
            {
                Place = row.Place,
                Name = row.Text("name"),
                Kind = kind,
                Flash = row.Text("flash"),
                SetUp = row.Text("set-up"),
                Framing = row.Text("framing"),
                Pitch = pitch,
                Shot = new ShotSettings(ThirdStopSeries.FromMark(power!.Value), distance, aperture is { } n ? ThirdStopSeries.FromMark(n) : null, iso is { } s ? ThirdStopSeries.FromMark(s) : null),
                Reflectance = reflectance,
                Measured = measured,
                Uncertainty = uncertainty,
                Date = day,
            });
        }
    }

    private static bool TryDay(string text, out DateOnly day, out string problem)
    {
        var isDay = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
        problem = isDay ? "" : $"'{Shown(text)}' is not a day; write it as 2026-05-09.";
        return isDay;
    }

    // What somebody typed is shown, but neither at any length nor with what a terminal would obey.
    private static string Shown(string text) => FieldReadingRow.Shown(text);

    // Meters read in tenths of a stop and repeat to about that; pictures bring the camera's tone curve in (common practice, no source).
    internal static double UsualUncertainty(CalibrationReadingKind kind) => kind switch
    {
        CalibrationReadingKind.FlashMeter or CalibrationReadingKind.PanelMeter => 0.12,
        CalibrationReadingKind.WhiteMargin => 0.15,
        _ => 0.2,
    };
}
