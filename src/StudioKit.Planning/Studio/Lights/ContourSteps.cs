using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Which margins to draw contour lines at.</summary>
internal static class ContourSteps
{
    private const int MostLines = 9;

    // A photographer counts in thirds of a stop, then in halves and whole ones.
    private static readonly double[] Steps = [1.0 / 3, 0.5, 1, 2, 4];

    // What lies further under clipping and under all that is seen has no contour line: it is dark whatever its number.
    private const double DeepestUnderSeen = 1;

    /// <summary>A round step that gives few lines, and its multiples within the range.</summary>
    /// <param name="margins">All margins [stops].</param>
    /// <param name="darkestSeen">Margin of the darkest point that is seen.</param>
    public static (Stops Step, IReadOnlyList<Stops> Levels) For(IReadOnlyList<double> margins, Stops darkestSeen)
    {
        var highest = margins.Max();
        var lowest = Math.Max(margins.Min(), Math.Min(0, darkestSeen.Value) - DeepestUnderSeen);
        var step = Steps.First(step => step == Steps[^1] || Count(lowest, highest, step) <= MostLines);
        var first = (int)Math.Ceiling(lowest / step);
        return (new Stops(step), [.. Enumerable.Range(first, Count(lowest, highest, step)).Select(i => new Stops(i * step))]);
    }

    private static int Count(double lowest, double highest, double step) =>
        Math.Max(0, (int)Math.Floor(highest / step) - (int)Math.Ceiling(lowest / step) + 1);
}
