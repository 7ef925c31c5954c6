namespace StudioKit.Planning.Cutting;

/// <summary>Which pieces are cut from which sheets.</summary>
public sealed record SheetCutPlan
{
    /// <summary>How the cut's width is counted in every plan.</summary>
    public const string KerfConvention =
        "Every cut goes from edge to edge of its region and takes one kerf; none is taken along a sheet's own edge.";

    /// <summary>Sheets in the order of cutting.</summary>
    public required IReadOnlyList<CutSheet> Sheets { get; init; }

    /// <summary>Pieces that can't be cut, each with its reason.</summary>
    public required IReadOnlyList<UncutPiece> Uncut { get; init; }

    /// <summary>How good the plan is.</summary>
    public required CutProof Proof { get; init; }

    /// <summary>Remainders worth keeping, as stock without a price.</summary>
    public required IReadOnlyList<StockSheet> Offcuts { get; init; }

    /// <summary>Stock after the job: the remainders, and sheets that were counted but not taken.</summary>
    public required IReadOnlyList<StockSheet> StockForNextTime { get; init; }

    /// <summary>Whether every piece is cut.</summary>
    public bool Complete => Uncut.Count == 0;

    /// <summary>Number of sheets taken [1].</summary>
    public int TotalSheets => Sheets.Count;

    /// <summary>Money spent [1], in the stock's currency.</summary>
    public decimal TotalCost => Sheets.Sum(sheet => sheet.Price);
}
