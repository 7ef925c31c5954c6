using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>What is to be cut from which sheets.</summary>
public sealed record SheetCutRequest
{
    /// <summary>Pieces wanted; at least one entry.</summary>
    public required IReadOnlyList<SheetPiece> Pieces { get; init; }

    /// <summary>Sheets on hand or to buy. Where none has a price, the plan takes as few sheets as it can.</summary>
    public required IReadOnlyList<StockSheet> Stock { get; init; }

    /// <summary>Width of one cut.</summary>
    public Length Kerf { get; init; } = Length.Zero;

    /// <summary>Cut off the left and the lower edge of every sheet to square it, the kerf of those cuts included.</summary>
    public Length Trim { get; init; } = Length.Zero;

    /// <summary>Remainders with a side shorter than this are scrap, not stock for next time.</summary>
    public Length ShortestKeptSide { get; init; } = Length.FromMillimeters(50);
}
