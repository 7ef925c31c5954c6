using System.Globalization;
using StudioKit.Planning.Tables;
using UnitsNet;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>Cut plans as comma-separated tables, one row a piece.</summary>
public static class CutPlanTables
{
    /// <summary>A plan of bars.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The table with its head; lengths in millimetres.</returns>
    public static string Of(BarCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CsvText.Row("bar", "stock", "stockLengthMm", "price", "piece", "lengthMm", "startMm", "endMm", "offcutMm")
            + string.Concat(plan.Bars.SelectMany(bar => bar.Marks.Select(mark => CsvText.Row(
                Text(bar.Number),
                bar.StockLabel,
                Text(bar.StockLength),
                Text(bar.Price),
                mark.Label,
                Text(mark.Length),
                Text(mark.Start),
                Text(mark.End),
                Text(bar.Offcut)))));
    }

    /// <summary>A plan of sheets.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The table with its head; lengths in millimetres.</returns>
    public static string Of(SheetCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CsvText.Row("sheet", "stock", "stockWidthMm", "stockHeightMm", "price", "piece", "xMm", "yMm", "widthMm", "heightMm", "turned")
            + string.Concat(plan.Sheets.SelectMany(sheet => sheet.Panels.Select(panel => CsvText.Row(
                Text(sheet.Number),
                sheet.StockLabel,
                Text(sheet.StockWidth),
                Text(sheet.StockHeight),
                Text(sheet.Price),
                panel.Label,
                Text(panel.X),
                Text(panel.Y),
                Text(panel.Width),
                Text(panel.Height),
                panel.Turned ? "yes" : "no"))));
    }

    private static string Text(Length length) => length.Millimeters.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Text(decimal price) => price.ToString(CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
