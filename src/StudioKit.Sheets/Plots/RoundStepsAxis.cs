using OxyPlot.Axes;

namespace StudioKit.Sheets.Plots;

/// <summary>A doubling axis whose ticks stand at round numbers, as a tape has them: 10, 15, 20, 30, 40, 60, 80, 100, …</summary>
/// <param name="start">The value at place nought.</param>
/// <param name="ticksPerDoubling">Places to a doubling of the value.</param>
internal sealed class RoundStepsAxis(double start, double ticksPerDoubling) : LinearAxis
{
    // Neighbours are at least a quarter apart, so that their texts clear each other.
    private static readonly double[] Steps = [1, 1.5, 2, 3, 4, 6, 8];

    public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
    {
        var (least, most) = (start * Math.Pow(2, ActualMinimum / ticksPerDoubling), start * Math.Pow(2, ActualMaximum / ticksPerDoubling));
        double[] places =
        [
            .. Enumerable.Range((int)Math.Floor(Math.Log10(least)), 1 + (int)Math.Ceiling(Math.Log10(most / least)))
                .SelectMany(power => Steps.Select(step => step * Math.Pow(10, power)))
                .Where(value => value >= least && value <= most)
                .Select(value => DoublingAxis.Place(value, start, ticksPerDoubling)),
        ];
        (majorLabelValues, majorTickValues, minorTickValues) = (places, places, []);
    }
}
