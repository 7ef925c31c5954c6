namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Longest piece first, each into the first bar that has room for it.</summary>
internal static class FirstFitDecreasing
{
    /// <summary>The cheapest of several runs, each opening new bars in another order.</summary>
    public static List<BarPattern> Best(BarJob job) => Preferences(job)
        .Select(preference => Swapped(job, Run(job, preference)))
        .MinBy(bars => (-bars.Sum(bar => bar.Counts.Sum()), bars.Sum(bar => job.Stock[bar.Stock].Cost), bars.Count))
        ?? [];

    /// <summary>Orders in which stock is opened: by price per length, and each buyable length on its own first; what is on hand always leads.</summary>
    private static IEnumerable<int[]> Preferences(BarJob job)
    {
        var byValue = Enumerable.Range(0, job.Stock.Length)
            .OrderBy(i => (double)job.Stock[i].Cost / job.Stock[i].Capacity)
            .ThenBy(i => job.Stock[i].Capacity)
            .ToArray();
        yield return byValue;
        foreach (var favourite in byValue.Where(i => job.Stock[i].Cost > 0).Skip(1))
        {
            yield return [.. byValue.OrderBy(i => job.Stock[i].Cost == 0 ? 0 : i == favourite ? 1 : 2)];
        }
    }

    private static List<BarPattern> Run(BarJob job, int[] preference)
    {
        var bars = new List<BarPattern>();
        var room = new List<int>();
        var left = job.Stock.Select(bar => bar.Available).ToArray();
        for (var i = 0; i < job.Lengths.Length; i++)
        {
            for (var n = 0; n < job.Demand[i]; n++)
            {
                var length = job.Lengths[i];
                var index = room.FindIndex(space => space >= length);
                if (index < 0 && !TryOpen(job, preference, left, length, bars, room, out index))
                {
                    break;
                }

                bars[index].Counts[i]++;
                room[index] -= length;
            }
        }

        return bars;
    }

    private static bool TryOpen(
        BarJob job, int[] preference, int[] left, int length, List<BarPattern> bars, List<int> room, out int index)
    {
        index = bars.Count;
        var choice = Array.FindIndex(preference, i => left[i] > 0 && job.Stock[i].Capacity >= length);
        if (choice < 0)
        {
            return false;
        }

        var stock = preference[choice];
        left[stock]--;
        bars.Add(new BarPattern(stock, new int[job.Lengths.Length]));
        room.Add(job.Stock[stock].Capacity);
        return true;
    }

    /// <summary>Puts each bar's pieces on the cheapest stock that still holds them.</summary>
    public static List<BarPattern> Swapped(BarJob job, List<BarPattern> bars)
    {
        var left = job.Stock.Select(bar => bar.Available).ToArray();
        bars.ForEach(bar => left[bar.Stock]--);
        for (var b = 0; b < bars.Count; b++)
        {
            var used = job.Used(bars[b].Counts);
            var better = Enumerable.Range(0, job.Stock.Length)
                .Where(i => left[i] > 0 && job.Stock[i].Capacity >= used && job.Stock[i].Cost < job.Stock[bars[b].Stock].Cost)
                .OrderBy(i => job.Stock[i].Cost)
                .ThenBy(i => job.Stock[i].Capacity)
                .Cast<int?>()
                .FirstOrDefault();
            if (better is { } cheaper)
            {
                left[bars[b].Stock]++;
                left[cheaper]--;
                bars[b] = bars[b] with { Stock = cheaper };
            }
        }

        return bars;
    }
}
