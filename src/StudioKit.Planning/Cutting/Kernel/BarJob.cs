namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>A request of bars in whole numbers: equal lengths merged, impossible pieces set aside.</summary>
/// <remarks>
/// Every piece carries one kerf and every bar lends one, so that n pieces fit where Σ(l + k) ≤ L − trim + k:
/// the planners below see a job without kerf.
/// </remarks>
internal sealed class BarJob : CutJob
{
    private BarJob(BarCutRequest request, StockPrices prices)
        : base(prices, request.Kerf, request.Trim) => Request = request;

    public BarCutRequest Request { get; }

    /// <summary>Different piece lengths with one kerf added [tenths of a millimetre], longest first.</summary>
    public int[] Lengths { get; private set; } = [];

    /// <summary>How many pieces of each length.</summary>
    public int[] Demand { get; private set; } = [];

    /// <summary>The pieces of each length, in the order of the request.</summary>
    public BarPiece[][] Pieces { get; private set; } = [];

    public BarStock[] Stock { get; private set; } = [];

    /// <summary>Pieces longer than any stock.</summary>
    public IReadOnlyList<UncutPiece> TooLong { get; private set; } = [];

    public static BarJob From(BarCutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        RefuseNone(request.Pieces.Count);
        var job = new BarJob(request, StockPrices.From([.. request.Stock.Select(bar => bar.Price)]));
        var longest = request.Stock.Where(bar => bar.Count is null or > 0).Select(job.Capacity).DefaultIfEmpty(0).Max();
        var countable = request.Pieces.ToLookup(piece => CanCount(piece.Length));
        var groups = countable[true]
            .GroupBy(piece => job.Needed(piece.Length))
            .OrderByDescending(group => group.Key)
            .ToLookup(group => group.Key <= longest);
        job.SetPieces(groups[true]);
        job.TooLong = [.. countable[false].Concat(groups[false].SelectMany(group => group)).Select(TooLongPiece)];
        job.SetStock();
        return job;
    }

    /// <summary>The same lengths and stock in smaller numbers.</summary>
    public BarJob Rest(int[] demand, int[] available) => new(Request, Prices)
    {
        Lengths = Lengths,
        Pieces = Pieces,
        Demand = demand,
        Stock = [.. Stock.Select((bar, j) => bar with { Available = available[j] })],
    };

    public int FinishedLength(int index) => Lengths[index] - Kerf;

    public int Used(int[] counts)
    {
        var used = 0;
        for (var i = 0; i < counts.Length; i++)
        {
            used += counts[i] * Lengths[i];
        }

        return used;
    }

    /// <summary>The best bound that needs no search [ticks].</summary>
    public long QuickBound()
    {
        if (Lengths.Length == 0)
        {
            return 0;
        }

        var total = Lengths.Select((length, i) => (long)length * Demand[i]).Sum();
        var continuous = CuttingBounds.Continuous(total, Stock.Select(bar => ((long)bar.Capacity, bar.Cost, bar.Available)));
        var longest = Stock.Max(bar => bar.Capacity);
        var bars = Math.Max(CuttingBounds.L2(longest, Lengths, Demand), CuttingBounds.PiecesPerBar(longest, Lengths, Demand));
        return Math.Max(continuous, bars * Stock.Min(bar => bar.Cost));
    }

    private static UncutPiece TooLongPiece(BarPiece piece) => new(
        piece.Label, Tenths.RoundedUp(piece.Length), null, Wanted(piece.Count), UncutReason.TooLarge);

    private int Capacity(StockBar bar)
    {
        OnHand(bar.Count);
        return Given(bar.Length);
    }

    private void SetPieces(IEnumerable<IGrouping<int, BarPiece>> groups)
    {
        var ordered = groups.ToArray();
        Lengths = [.. ordered.Select(group => group.Key)];
        Pieces = [.. ordered.Select(group => group.SelectMany(piece => Enumerable.Repeat(piece, Wanted(piece.Count))).ToArray())];
        Demand = [.. Pieces.Select(pieces => pieces.Length)];
    }

    private void SetStock()
    {
        var total = Demand.Sum();
        Stock =
        [
            .. Request.Stock
                .Select((bar, row) => new BarStock(row, Capacity(bar), Prices.Ticks[row], Math.Min(bar.Count ?? total, total)))
                .Where(bar => bar.Available > 0 && Lengths.Length > 0 && bar.Capacity >= Lengths[^1]),
        ];
    }
}
