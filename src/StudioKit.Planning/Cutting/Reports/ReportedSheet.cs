namespace StudioKit.Planning.Cutting.Reports;

/// <summary>One sheet in plain numbers.</summary>
/// <param name="Sheet">Position in the plan [1]; from 1.</param>
/// <param name="StockLabel">The stock's name.</param>
/// <param name="StockWidthMm">Width before trim [mm].</param>
/// <param name="StockHeightMm">Height before trim [mm].</param>
/// <param name="Price">Price of the sheet [1].</param>
/// <param name="Pieces">Pieces in their places.</param>
/// <param name="Cuts">Cuts in order, each from edge to edge of its region.</param>
public sealed record ReportedSheet(
    int Sheet,
    string StockLabel,
    double StockWidthMm,
    double StockHeightMm,
    decimal Price,
    IReadOnlyList<ReportedPanel> Pieces,
    IReadOnlyList<ReportedCut> Cuts)
{
    internal static ReportedSheet From(CutSheet sheet) => new(
        sheet.Number,
        sheet.StockLabel,
        CutReport.Millimeters(sheet.StockWidth),
        CutReport.Millimeters(sheet.StockHeight),
        sheet.Price,
        [
            .. sheet.Panels.Select(panel => new ReportedPanel(
                panel.Label,
                CutReport.Millimeters(panel.X),
                CutReport.Millimeters(panel.Y),
                CutReport.Millimeters(panel.Width),
                CutReport.Millimeters(panel.Height),
                panel.Turned)),
        ],
        [.. ReportedCut.Of(sheet.Squared)]);
}
