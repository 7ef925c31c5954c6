using System.Globalization;
using StudioKit.Field.Pictures;

namespace StudioKit.Field.Calibration;

/// <summary>A tone curve as lines of a correction file.</summary>
internal static class ToneCurveText
{
    /// <summary>The lines.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="camera">Name of its camera, quoted.</param>
    public static string Of(ToneCurve curve, string camera) => string.Create(
        CultureInfo.InvariantCulture,
        $"tone-curve:   # stops under clipping by the standard curve, and where the light really lies\n  camera: {camera}\n  plus-minus: {Math.Max(0.001, curve.PlusMinus):0.###}\n  standard: [{List(curve.StandardStops)}]\n  light: [{List(curve.LightStops)}]\n");

    private static string List(IEnumerable<double> stops) => string.Join(", ", stops.Select(stop => stop.ToString("0.####", CultureInfo.InvariantCulture)));
}
