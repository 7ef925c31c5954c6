using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>One bar of stock and the pieces cut from it.</summary>
/// <param name="Number">Position in the plan [1]; from 1.</param>
/// <param name="Pattern">Bars with the same number are cut alike [1]; from 1.</param>
/// <param name="StockLabel">The stock's name.</param>
/// <param name="StockLength">Length before the squaring trim.</param>
/// <param name="Price">Price of the bar [1].</param>
/// <param name="Trim">What squaring takes off the end; the marks count from there.</param>
/// <param name="Marks">Pieces in the order of cutting from the squared end, short ones first, as the rest of the bar must be long enough to be clamped.</param>
/// <param name="Offcut">What is left after the last cut.</param>
/// <param name="SawCuts">Strokes of the saw, squaring included [1].</param>
public sealed record CutBar(
    int Number,
    int Pattern,
    string StockLabel,
    Length StockLength,
    decimal Price,
    Length Trim,
    IReadOnlyList<CutMark> Marks,
    Length Offcut,
    int SawCuts)
{
    /// <summary>The stock's name with its sizes; none where whoever gave the stock named it.</summary>
    public SoldName? Sold { get; init; }

    /// <summary>The stock's name for whoever reads the plan.</summary>
    public string StockName => Sold?.Words ?? StockLabel;
}
