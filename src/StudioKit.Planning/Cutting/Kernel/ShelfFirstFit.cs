namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Highest piece first, each onto the first shelf with room for it; shelves are stacked in sheets.</summary>
internal static class ShelfFirstFit
{
    // Lying flat makes low shelves, standing up makes few of them.
    private static readonly bool[] WaysToLie = [false, true];

    /// <summary>The cheapest of several runs, each opening another stock first and laying pieces another way.</summary>
    public static List<SheetBin> Best(SheetJob job) => (
        from preference in Preferences(job)
        from tall in WaysToLie
        select Swapped(job, Run(job, preference, tall)))
        .MinBy(bins => (-bins.Sum(bin => PieceCount(bin.Layout)), bins.Sum(bin => job.Stock[bin.Stock].Cost), bins.Count))
        ?? [];

    public static int PieceCount(Layout layout) =>
        layout is JoinedLayout joined ? PieceCount(joined.First) + PieceCount(joined.Second) : 1;

    public static IEnumerable<int[]> Preferences(SheetJob job)
    {
        var byValue = Enumerable.Range(0, job.Stock.Length)
            .OrderBy(i => (double)job.Stock[i].Cost / job.Stock[i].Area)
            .ThenBy(i => job.Stock[i].Area)
            .ToArray();
        yield return byValue;
        foreach (var favourite in byValue.Where(i => job.Stock[i].Cost > 0).Skip(1))
        {
            yield return [.. byValue.OrderBy(i => job.Stock[i].Cost == 0 ? 0 : i == favourite ? 1 : 2)];
        }
    }

    private static List<SheetBin> Run(SheetJob job, int[] preference, bool tall)
    {
        var sheets = new List<ShelfSheet>();
        var left = job.Stock.Select(sheet => sheet.Available).ToArray();
        var pieces = job.Kinds
            .SelectMany((kind, i) => Enumerable.Repeat(kind.Lying(i).OrderBy(lying => tall ? -lying.Height : lying.Height).ToArray(), kind.Demand))
            .OrderByDescending(lying => lying[0].Height)
            .ThenByDescending(lying => lying[0].Width);
        foreach (var lying in pieces)
        {
            if (!sheets.Exists(sheet => lying.Any(sheet.TryPlace)))
            {
                Open(job, preference, left, lying, sheets);
            }
        }

        return [.. sheets.Select(sheet => new SheetBin(sheet.Stock, sheet.ToLayout()))];
    }

    private static void Open(SheetJob job, int[] preference, int[] left, PieceLayout[] lying, List<ShelfSheet> sheets)
    {
        var choice = Array.FindIndex(preference, i => left[i] > 0 && Array.Exists(lying, job.Stock[i].Holds));
        if (choice >= 0)
        {
            var stock = preference[choice];
            left[stock]--;
            var sheet = new ShelfSheet(stock, job.Stock[stock].Width, job.Stock[stock].Height);
            _ = lying.Any(sheet.TryPlace);
            sheets.Add(sheet);
        }
    }

    /// <summary>Puts each sheet's layout on the cheapest stock that still holds it.</summary>
    public static List<SheetBin> Swapped(SheetJob job, List<SheetBin> bins)
    {
        var left = job.Stock.Select(sheet => sheet.Available).ToArray();
        bins.ForEach(bin => left[bin.Stock]--);
        for (var b = 0; b < bins.Count; b++)
        {
            var better = Enumerable.Range(0, job.Stock.Length)
                .Where(i => left[i] > 0 && job.Stock[i].Holds(bins[b].Layout) && job.Stock[i].Cost < job.Stock[bins[b].Stock].Cost)
                .OrderBy(i => job.Stock[i].Cost)
                .ThenBy(i => job.Stock[i].Area)
                .Cast<int?>()
                .FirstOrDefault();
            if (better is { } cheaper)
            {
                left[bins[b].Stock]++;
                left[cheaper]--;
                bins[b] = bins[b] with { Stock = cheaper };
            }
        }

        return bins;
    }
}
