using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>One sheet of stock, its cuts and its pieces.</summary>
/// <param name="Number">Position in the plan [1]; from 1.</param>
/// <param name="StockLabel">The stock's name.</param>
/// <param name="StockWidth">Width before the squaring trim.</param>
/// <param name="StockHeight">Height before the squaring trim.</param>
/// <param name="Price">Price of the sheet [1].</param>
/// <param name="Squared">The squared sheet as a tree of cuts.</param>
/// <param name="Panels">The pieces in the order in which the cuts free them.</param>
/// <param name="Remainders">Regions left over, scrap included.</param>
public sealed record CutSheet(
    int Number,
    string StockLabel,
    Length StockWidth,
    Length StockHeight,
    decimal Price,
    SheetRegion Squared,
    IReadOnlyList<PlacedPanel> Panels,
    IReadOnlyList<SheetRegion> Remainders)
{
    /// <summary>The stock's name with its sizes; none where whoever gave the stock named it.</summary>
    public SoldName? Sold { get; init; }

    /// <summary>The stock's name for whoever reads the plan.</summary>
    public string StockName => Sold?.Words ?? StockLabel;
}
