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
        ["name", "kind", "flash", "set-up", "framing", "pitch", "power", "distance", "f-number", "iso", "reflectance", "reading", "uncertainty"];

    private static readonly string[] Needed = ["name", "kind", "power", "reading"];

    private static readonly Dictionary<string, CalibrationReadingKind> Kinds = new(StringComparer.Ordinal)
    {
        ["flash-meter"] = CalibrationReadingKind.FlashMeter,
        ["panel-meter"] = CalibrationReadingKind.PanelMeter,
        ["white-margin"] = CalibrationReadingKind.WhiteMargin,
        ["card-in-frame"] = CalibrationReadingKind.CardInFrame,
    };

    /// <summary>Reads a table with its head.</summary>
    /// <param name="path">Name to report faults under.</param>
    /// <param name="text">The table.</param>
    /// <returns>The readings, or every cell that is wrong with its line.</returns>
    public static FieldResult<IReadOnlyList<FieldReading>> Parse(string path, string text)
    {
        var rows = CsvText.Read(text);
        var head = rows.Count == 0 ? [] : rows[0].Select(column => column.Text).ToArray();
        var faults = HeadFaults(path, head).ToList();
        var readings = new List<FieldReading>();
        if (faults.Count == 0)
        {
            foreach (var row in rows.Skip(1))
            {
                Read(new FieldReadingRow($"{path}({row[0].Line})", head, row, faults), readings);
            }
        }

        return faults.Count > 0
            ? FieldResult<IReadOnlyList<FieldReading>>.Refused(faults)
            : FieldResult<IReadOnlyList<FieldReading>>.Sound(readings, []);
    }

    private static IEnumerable<FieldDiagnostic> HeadFaults(string path, string[] head)
    {
        foreach (var column in Needed.Except(head, StringComparer.Ordinal))
        {
            yield return new FieldDiagnostic("FLD204", $"{path}(1)", $"The head has no column '{column}'.", "Columns: " + string.Join(", ", Known));
        }

        foreach (var column in head.Except(Known, StringComparer.Ordinal))
        {
            var nearest = NearestName.Of(column, Known);
            yield return new FieldDiagnostic(
                "FLD204", $"{path}(1)", $"There is no column '{column}'.", nearest is null ? "Columns: " + string.Join(", ", Known) : $"Did you mean '{nearest}'?");
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
        var measured = row.Measured("reading", kind, iso ?? new IsoSpeed(100));
        row.Require(reflectance is > 0 and <= 1, "reflectance", "must lie above 0 and at most at 1.");
        row.Require(uncertainty > 0, "uncertainty", "must be above zero.");
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
            });
        }
    }

    // Meters read in tenths of a stop and repeat to about that; pictures bring the camera's tone curve in (common practice, no source).
    private static double UsualUncertainty(CalibrationReadingKind kind) => kind switch
    {
        CalibrationReadingKind.FlashMeter or CalibrationReadingKind.PanelMeter => 0.12,
        CalibrationReadingKind.WhiteMargin => 0.15,
        _ => 0.2,
    };
}
