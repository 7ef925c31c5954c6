using System.Globalization;
using StudioKit.Planning.Tables;
using UnitsNet;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>Cut plans as comma-separated tables, one row a piece.</summary>
public static class CutPlanTables
{
    /// <summary>A plan of bars.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The table with its head; lengths in the units of the scope.</returns>
    public static string Of(BarCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return UnitCell.Row("bar", "stock", UnitCell.LengthHead("stockLength"), "price", "piece", UnitCell.LengthHead("length"), UnitCell.LengthHead("start"), UnitCell.LengthHead("end"), UnitCell.LengthHead("offcut"))
            + string.Concat(plan.Bars.SelectMany(bar => bar.Marks.Select(mark => UnitCell.Row(
                Text(bar.Number),
                bar.StockName,
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
    /// <returns>The table with its head; lengths in the units of the scope.</returns>
    public static string Of(SheetCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return UnitCell.Row("sheet", "stock", UnitCell.LengthHead("stockWidth"), UnitCell.LengthHead("stockHeight"), "price", "piece", UnitCell.LengthHead("x"), UnitCell.LengthHead("y"), UnitCell.LengthHead("width"), UnitCell.LengthHead("height"), "turned")
            + string.Concat(plan.Sheets.SelectMany(sheet => sheet.Panels.Select(panel => UnitCell.Row(
                Text(sheet.Number),
                sheet.StockName,
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

    private static UnitCell Text(Length length) => UnitCell.Of(length, "0.###");

    private static string Text(decimal price) => price.ToString(CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
