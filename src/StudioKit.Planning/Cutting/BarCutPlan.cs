namespace StudioKit.Planning.Cutting;

/// <summary>Which pieces are cut from which bars.</summary>
public sealed record BarCutPlan
{
    /// <summary>How the saw cut is counted in every plan.</summary>
    public const string KerfConvention =
        "One kerf between neighbouring pieces, none after a piece that ends with the bar: sum of (piece + kerf) "
        + "is at most (stock length - trim + kerf).";

    /// <summary>Bars in the order of cutting; bars cut alike stand together.</summary>
    public required IReadOnlyList<CutBar> Bars { get; init; }

    /// <summary>Pieces that can't be cut, each with its reason.</summary>
    public required IReadOnlyList<UncutPiece> Uncut { get; init; }

    /// <summary>How good the plan is.</summary>
    public required CutProof Proof { get; init; }

    /// <summary>Remainders worth keeping, as stock without a price.</summary>
    public required IReadOnlyList<StockBar> Offcuts { get; init; }

    /// <summary>Stock after the job: the offcuts, and bars that were counted but not taken.</summary>
    public required IReadOnlyList<StockBar> StockForNextTime { get; init; }

    /// <summary>Whether every piece is cut.</summary>
    public bool Complete => Uncut.Count == 0;

    /// <summary>Number of bars taken [1].</summary>
    public int TotalBars => Bars.Count;

    /// <summary>Money spent [1], in the stock's currency.</summary>
    public decimal TotalCost => Bars.Sum(bar => bar.Price);

    /// <summary>Number of different ways of cutting a bar [1].</summary>
    public int DistinctPatterns => Bars.Select(bar => bar.Pattern).Distinct().Count();
}
