using UnitsNet;

namespace StudioKit.Kits.Stock;

/// <summary>A stock length of pipe.</summary>
public sealed record StockLengthSpec
{
    /// <summary>Length.</summary>
    public required Length Length { get; init; }

    /// <summary>Price of one in the stock's currency [1]; 0 for an offcut on hand.</summary>
    public decimal Price { get; init; }

    /// <summary>How many there are [1]; as many as needed where the kit gives none.</summary>
    public int? Count { get; init; }
}
