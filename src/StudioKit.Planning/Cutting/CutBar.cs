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

    /// <summary>The pieces for a rule in inches, each from where the saw left off to the last thirty-second of an inch that does not make it longer than it is planned.</summary>
    /// <remarks>So each is less than a thirty-second short, whatever stands before it, and all of them fit the bar as the planned ones do.</remarks>
    public IReadOnlyList<CutMark> InchMarks
    {
        get
        {
            var marks = new List<CutMark>();
            var (sawn, before) = (Length.Zero, Length.Zero);
            foreach (var mark in Marks)
            {
                var start = sawn + (mark.Start - before);
                var end = WholeLengths.DownToThirtySecond(start + mark.Length);
                marks.Add(new CutMark(mark.Label, end - start, start, end));
                (sawn, before) = (end, mark.End);
            }

            return marks;
        }
    }

    /// <summary>The stock's name for whoever reads the plan.</summary>
    public string StockName => Sold?.Words ?? StockLabel;
}
