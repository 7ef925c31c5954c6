using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Sheets of one size, on hand or to buy.</summary>
/// <param name="Label">Name that the cut plan prints for the sheet.</param>
/// <param name="Width">First side, before the squaring trim.</param>
/// <param name="Height">Second side, before the squaring trim.</param>
/// <param name="Price">Price of one in the stock's currency [1]; 0 for a remnant on hand.</param>
/// <param name="Count">How many there are [1]; as many as needed where null.</param>
public sealed record StockSheet(string Label, Length Width, Length Height, decimal Price = 0, int? Count = null)
{
    /// <summary>The same name with its sizes in the units of whoever reads it; none where whoever gave the stock named it.</summary>
    public SoldName? Sold { get; init; }
}
