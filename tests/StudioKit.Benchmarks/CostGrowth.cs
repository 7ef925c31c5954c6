using System.Globalization;

namespace StudioKit.Benchmarks;

/// <summary>Prints how costs grow: processor time and allocated memory at several sizes, and the power of the size that fits each best, where 1 is linear.</summary>
internal static class CostGrowth
{
    private const int Runs = 3;

    public static void Print(TextWriter output)
    {
        using var logs = new LogCosts();
        using var sheets = new SheetCosts();
        foreach (var cost in logs.All.Concat(sheets.All))
        {
            Print(cost, output);
        }
    }

    private static void Print(GrowingCost cost, TextWriter output)
    {
        output.WriteLine(cost.Name);
        var measured = new List<(double Size, double Milliseconds, double Megabytes)>();
        foreach (var size in cost.Sizes)
        {
            var (milliseconds, megabytes) = Measure(cost.Prepare(size));
            measured.Add((size, milliseconds, megabytes));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {size,9} {milliseconds,9:0} ms {megabytes,9:0.0} MB"));
        }

        var (time, memory) = (Exponent([.. measured.Select(one => (one.Size, one.Milliseconds))]), Exponent([.. measured.Select(one => (one.Size, one.Megabytes))]));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  grows with the power {time:0.00} in time, {memory:0.00} in memory"));
    }

    // The first time makes what every later one has; the least of the others is what other work on the machine touched least.
    private static (double Milliseconds, double Megabytes) Measure(Action work)
    {
        work();
        var (least, allocated) = (double.PositiveInfinity, 0.0);
        for (var run = 0; run < Runs; run++)
        {
            var (time, memory) = (Environment.CpuUsage.TotalTime, GC.GetTotalAllocatedBytes(precise: true));
            work();
            least = Math.Min(least, (Environment.CpuUsage.TotalTime - time).TotalMilliseconds);
            allocated = (GC.GetTotalAllocatedBytes(precise: true) - memory) / 1e6;
        }

        return (least, allocated);
    }

    /// <summary>The slope of the straight line of least squares through the logarithms.</summary>
    private static double Exponent(IReadOnlyList<(double Size, double Cost)> points)
    {
        var (x, y) = (points.Select(point => Math.Log(point.Size)).ToList(), points.Select(point => Math.Log(point.Cost)).ToList());
        var (meanX, meanY) = (x.Average(), y.Average());
        return x.Zip(y, (one, other) => (one - meanX) * (other - meanY)).Sum() / x.Sum(one => Math.Pow(one - meanX, 2));
    }
}
