using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>What an integer program over patterns must know of a job, whether of bars or of sheets.</summary>
/// <param name="Demand">How many pieces of each kind.</param>
/// <param name="Stock">Size, cost [ticks] and number of each stock.</param>
internal sealed record CoverJob(int[] Demand, (long Size, long Cost, int Available)[] Stock)
{
    public static CoverJob From(BarJob job) =>
        new(job.Demand, [.. job.Stock.Select(bar => ((long)bar.Capacity, bar.Cost, bar.Available))]);

    public static CoverJob From(SheetJob job) =>
        new([.. job.Kinds.Select(kind => kind.Demand)], [.. job.Stock.Select(sheet => (sheet.Area, sheet.Cost, sheet.Available))]);

    /// <summary>How often a pattern can be of use.</summary>
    public int MostUseful(BarPattern pattern)
    {
        var most = pattern.Counts.Select((count, i) => count == 0 ? 0 : (Demand[i] + count - 1) / count).Max();
        return Math.Min(most, Stock[pattern.Stock].Available);
    }

    /// <summary>More than any plan can cost, so that a piece is only left uncut where stock is short [ticks].</summary>
    public long Penalty => 1 + Stock.Sum(row => row.Cost * row.Available);
}
