using System.Globalization;
using StudioKit.Field.Calibration;
using StudioKit.Kits;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Tables;

/// <summary>What a calibration found, as text and as JSON.</summary>
internal static class CalibrationReport
{
    public static string Lines(KitSpec kit, KitCorrection correction, CalibrationResult result)
    {
        var lines = correction.Values(kit).Select(value => (value.Quantity, Value(value)));
        var readings = result.Residuals.Select(residual => ("  " + residual.Reading.Name, string.Create(
            CultureInfo.InvariantCulture,
            $"{residual.Before:+0.00;-0.00} stop off before, {residual.After:+0.00;-0.00} after{(residual.Disagrees ? ": DISAGREES with the others" : "")}")));
        return TextLines.Of([.. lines, ("readings", ""), .. readings], result.Caveats);
    }

    public static string Json(string target, KitSpec kit, KitCorrection correction, CalibrationResult result) => JsonReport.Document(json => json
        .Text("file", target)
        .List("corrections", correction.Values(kit), value => json
            .Text("quantity", value.Quantity).Text("unit", value.Unit).Number("before", value.Before).Number("after", value.After)
            .Stops("correction", value.Correction).Stops("uncertainty", value.PlusMinus))
        .List("readings", result.Residuals, residual => json
            .Text("name", residual.Reading.Name).Number("plannedStops", residual.Reading.Planned).Number("measuredStops", residual.Reading.Measured)
            .Number("beforeStops", residual.Before).Number("afterStops", residual.After)
            .Number("weight", residual.Weight).Flag("disagrees", residual.Disagrees))
        .Texts("caveats", result.Caveats));

    /// <summary>Before, after and how sure.</summary>
    public static string Value(MeasuredCorrection value) => string.Create(
        CultureInfo.InvariantCulture,
        $"{value.Before:0.##} -> {value.After:0.##} {value.Unit} ({value.Correction.Value:+0.00;-0.00} ± {value.PlusMinus.Value:0.00} stop)").Replace("  ", " ", StringComparison.Ordinal);
}
