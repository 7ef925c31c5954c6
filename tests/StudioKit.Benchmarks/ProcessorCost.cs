using System.Globalization;

namespace StudioKit.Benchmarks;

/// <summary>Processor time of all threads, which other work on the machine hardly touches.</summary>
internal static class ProcessorCost
{
    /// <summary>Time that a piece of work takes on average, after as many runs that are not counted [ms].</summary>
    public static double Of(int runs, Action work)
    {
        Run(runs, work);
        var before = Environment.CpuUsage.TotalTime;
        Run(runs, work);
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / runs;
    }

    /// <summary>A line that sets a cost against that of the whole.</summary>
    public static void Row(TextWriter output, string change, double cost, double whole) =>
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{change,-32} {cost,7:0.00} ms, {cost / whole,5:0.00} of the whole"));

    private static void Run(int runs, Action work)
    {
        for (var i = 0; i < runs; i++)
        {
            work();
        }
    }
}
