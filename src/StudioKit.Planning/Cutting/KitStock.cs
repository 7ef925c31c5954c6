using System.Globalization;
using StudioKit.Kits.Stock;
using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>A kit's stock as the cut planners take it.</summary>
public static class KitStock
{
    // What a builder's merchant sells where a kit names no stock of its own.
    private static readonly Length CommonPipe = Length.FromMeters(3);

    /// <summary>Bars of a kit; one 3 m length, as many as needed, where it names none.</summary>
    public static IReadOnlyList<StockBar> Bars(StockSpec stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        var bought = stock.Lengths.Count == 0
            ? [new StockBar(Text(CommonPipe), CommonPipe) { Sold = Sold(SoldForm.Bar, CommonPipe) }]
            : stock.Lengths.Select(bar => new StockBar(Text(bar.Length), bar.Length, bar.Price, bar.Count) { Sold = Sold(SoldForm.Bar, bar.Length) });
        return
        [
            .. stock.Offcuts.GroupBy(offcut => offcut).Select(alike => new StockBar($"{Text(alike.Key)} offcut", alike.Key, 0, alike.Count()) { Sold = Sold(SoldForm.Offcut, alike.Key) }),
            .. bought,
        ];
    }

    /// <summary>Sheets of one material of a kit.</summary>
    public static IReadOnlyList<StockSheet> Sheets(StockSpec stock, string material)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return
        [
            .. stock.Sheets
                .Where(sheet => string.Equals(sheet.Material, material, StringComparison.OrdinalIgnoreCase))
                .Select(sheet => new StockSheet(
                    $"{Text(sheet.Width)} x {Text(sheet.Height)}", sheet.Width, sheet.Height, sheet.Price, sheet.Count)
                { Sold = new SoldName(material, SoldForm.Stock, [sheet.Width, sheet.Height]) }),
        ];
    }

    private static SoldName Sold(SoldForm form, Length length) => new("", form, [length]);

    private static string Text(Length length) => length.Millimeters.ToString("0.#", CultureInfo.InvariantCulture) + " mm";
}
