using OxyPlot;
using OxyPlot.Axes;

namespace StudioKit.Sheets.Plots;

/// <summary>An axis on which every doubling takes the same room, as f-numbers, distances and powers are thought of.</summary>
internal static class DoublingAxis
{
    private const double Room = 0.25;

    /// <summary>Makes the axis around all values.</summary>
    /// <param name="position">Where it stands.</param>
    /// <param name="title">What it counts, with the unit.</param>
    /// <param name="values">Every value to be shown; above zero, at least one.</param>
    /// <param name="start">A value that carries a tick.</param>
    /// <param name="ticksPerDoubling">Ticks to a doubling of the value.</param>
    /// <param name="text">How a value is written at its tick.</param>
    /// <param name="atRoundNumbers">Whether its ticks stand at round numbers, and not at doublings.</param>
    public static LinearAxis Of(
        AxisPosition position, string title, IReadOnlyList<double> values, double start, double ticksPerDoubling, Func<double, string> text, bool atRoundNumbers = false)
    {
        var axis = atRoundNumbers ? new RoundStepsAxis(start, ticksPerDoubling) : new LinearAxis { MajorStep = Step(values, ticksPerDoubling) };
        axis.Position = position;
        axis.Title = title;
        axis.Minimum = Place(values.Min(), start, ticksPerDoubling) - Room;
        axis.Maximum = Place(values.Max(), start, ticksPerDoubling) + Room;
        axis.MinorTickSize = 0;
        axis.AxisTitleDistance = position == AxisPosition.Left ? 10 : 4;
        axis.MajorGridlineStyle = OxyPlot.LineStyle.Solid;
        axis.MajorGridlineThickness = 0.4;
        axis.MajorGridlineColor = OxyColors.Gray;
        axis.LabelFormatter = place => text(start * Math.Pow(2, place / ticksPerDoubling));
        return axis;
    }

    /// <summary>Where a value lies on the axis, in ticks from the start.</summary>
    public static double Place(double value, double start, double ticksPerDoubling) => Math.Log2(value / start) * ticksPerDoubling;

    // About ten ticks at most, or their texts run into each other.
    private static double Step(IReadOnlyList<double> values, double ticksPerDoubling) =>
        Math.Max(1, Math.Ceiling(Math.Log2(values.Max() / values.Min()) * ticksPerDoubling / 10));
}
