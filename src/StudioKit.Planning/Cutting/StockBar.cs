using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Bars of one length, on hand or to buy.</summary>
/// <param name="Label">Name that the cut plan prints for the bar.</param>
/// <param name="Length">Length as bought or found, before the squaring trim; above zero, at most 1000 m.</param>
/// <param name="Price">Price of one in the stock's currency [1]; 0 for an offcut on hand.</param>
/// <param name="Count">How many there are [1]; as many as needed where null.</param>
public sealed record StockBar(string Label, Length Length, decimal Price = 0, int? Count = null)
{
    /// <summary>The same name with its sizes in the units of whoever reads it; none where whoever gave the stock named it.</summary>
    public SoldName? Sold { get; init; }
}
