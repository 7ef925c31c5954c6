namespace StudioKit.Planning.Cutting.Reports;

/// <summary>One bar in plain numbers.</summary>
/// <param name="Bar">Position in the plan [1]; from 1.</param>
/// <param name="Pattern">Bars with the same number are cut alike [1].</param>
/// <param name="StockLabel">The stock's name.</param>
/// <param name="StockLengthMm">Length before trim [mm].</param>
/// <param name="Price">Price of the bar [1].</param>
/// <param name="Pieces">Pieces in order.</param>
/// <param name="OffcutMm">What is left [mm].</param>
/// <param name="SawCuts">Strokes of the saw [1].</param>
public sealed record ReportedBar(
    int Bar,
    int Pattern,
    string StockLabel,
    double StockLengthMm,
    decimal Price,
    IReadOnlyList<ReportedPiece> Pieces,
    double OffcutMm,
    int SawCuts)
{
    internal static ReportedBar From(CutBar bar) => new(
        bar.Number,
        bar.Pattern,
        bar.StockLabel,
        CutReport.Millimeters(bar.StockLength),
        bar.Price,
        [
            .. bar.Marks.Select(mark => new ReportedPiece(
                mark.Label,
                CutReport.Millimeters(mark.Length),
                CutReport.Millimeters(mark.Start),
                CutReport.Millimeters(mark.End))),
        ],
        CutReport.Millimeters(bar.Offcut),
        bar.SawCuts);
}
