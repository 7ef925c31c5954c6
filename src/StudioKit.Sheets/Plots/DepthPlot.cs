using OxyPlot;
using OxyPlot.Axes;
using StudioKit.Physics.Optics;
using StudioKit.Planning;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Plots;

/// <summary>Depth of field against magnification, a line for each f-number in use.</summary>
internal static class DepthPlot
{
    public static Drawing Of(IReadOnlyList<DepthCurve> curves)
    {
        var model = PlotDrawing.Empty();
        DepthPoint[] all = [.. curves.SelectMany(curve => curve.Points)];
        model.Axes.Add(DoublingAxis.Of(
            AxisPosition.Bottom, "magnification", [.. all.Select(point => point.Magnification.Value)], 1, 1, value => new Magnification(value).Nominal));
        model.Axes.Add(DoublingAxis.Of(
            AxisPosition.Left, $"depth of field, {DistanceFormat.PlotUnit}", [.. all.Select(point => DistanceFormat.PlotLength(point.DepthOfField))], 1, 1, MeasureFormat.ThreeDigits));
        foreach (var (curve, place) in curves.Select((curve, place) => (curve, place)))
        {
            var line = PlotDrawing.Line(curve.Aperture.Nominal, place);
            line.Points.AddRange(curve.Points.Select(point => new DataPoint(
                DoublingAxis.Place(point.Magnification.Value, 1, 1), DoublingAxis.Place(DistanceFormat.PlotLength(point.DepthOfField), 1, 1))));
            model.Series.Add(line);
        }

        return PlotDrawing.Of(
            model, "Depth of field", $"Depth of field against magnification at {string.Join(", ", curves.Select(curve => curve.Aperture.Nominal))}.");
    }
}
