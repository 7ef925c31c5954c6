using OxyPlot;
using OxyPlot.Axes;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Plots;

/// <summary>Power of one flash of a set-up against its distance, a line for each framing.</summary>
internal static class PowerPlot
{
    private const double Start = 10;

    /// <summary>The plot; none where no distance has a power.</summary>
    public static Drawing? Of(string setUp, string flash, IReadOnlyList<(string Framing, ValueList<DistanceStep> Powers)> lines)
    {
        var drawn = lines.Select(line => (line.Framing, Reached: line.Powers))
            .Where(line => line.Reached.Count > 1).Take(PlotDrawing.MostLines).ToList();
        if (drawn.Count == 0)
        {
            return null;
        }

        var model = PlotDrawing.Empty();
        model.Axes.Add(DoublingAxis.Of(
            AxisPosition.Bottom, $"distance of the flash, {DistanceFormat.CentimetreUnit}", [.. drawn.SelectMany(line => line.Reached).Select(pair => DistanceFormat.PlotDistance(pair.Distance))], Start, 2,
            MeasureFormat.ThreeDigits, atRoundNumbers: true));
        model.Axes.Add(DoublingAxis.Of(
            AxisPosition.Left, "power", [.. drawn.SelectMany(line => line.Reached).Select(pair => pair.ExactShare)], 1, 1,
            share => share > 1.001 ? "" : new FlashPower(Math.Min(1, share)).Nominal));
        foreach (var (line, place) in drawn.Select((line, place) => (line, place)))
        {
            var series = PlotDrawing.Line(line.Framing, place);
            series.Points.AddRange(line.Reached.Select(pair => new DataPoint(
                DoublingAxis.Place(DistanceFormat.PlotDistance(pair.Distance), Start, 2), DoublingAxis.Place(pair.ExactShare, 1, 1))));
            model.Series.Add(series);
        }

        return PlotDrawing.Of(model, $"Power of {flash}, {setUp}", $"Power of {flash} in {setUp} against its distance, for {drawn.Count} framings.");
    }
}
