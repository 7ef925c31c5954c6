using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>What is to be cut from which bars.</summary>
public sealed record BarCutRequest
{
    /// <summary>Pieces wanted; at least one entry.</summary>
    public required IReadOnlyList<BarPiece> Pieces { get; init; }

    /// <summary>Bars on hand or to buy. Where none has a price, the plan takes as few bars as it can.</summary>
    public required IReadOnlyList<StockBar> Stock { get; init; }

    /// <summary>Width of one saw cut.</summary>
    public Length Kerf { get; init; } = Length.Zero;

    /// <summary>Cut off one end of every bar to square it, the kerf of that cut included.</summary>
    public Length Trim { get; init; } = Length.Zero;

    /// <summary>Shorter remainders are scrap, not stock for next time.</summary>
    public Length ShortestKeptOffcut { get; init; } = Length.FromMillimeters(100);
}
