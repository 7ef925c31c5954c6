using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning.Cutting;

namespace StudioKit.Planning.Frames;

/// <summary>What to buy or take from the shelf for a frame and its panel.</summary>
internal static class ShoppingList
{
    public static IReadOnlyList<ShoppingLine> Of(
        KitSpec kit, PanelPlan panel, BarCutPlan pipe, SheetCutPlan sheets, IReadOnlyList<FittingCount> fittings) =>
    [
        .. pipe.Bars
            .GroupBy(bar => (bar.StockLabel, bar.Price))
            .Select(bars => new ShoppingLine($"{kit.Frame.Pipe.Name}, length of {bars.Key.StockLabel}", bars.Count(), PriceOf(kit, bars.Key.Price))),
        .. fittings.Select(fitting => new ShoppingLine($"{kit.Frame.Fittings.Name}: {fitting.Name}", fitting.Count, fitting.PriceEach)),
        .. sheets.Sheets
            .GroupBy(sheet => (sheet.StockLabel, sheet.Price))
            .Select(group => new ShoppingLine(
                $"{panel.Material} {panel.Thickness.Millimeters.ToString("0.#", CultureInfo.InvariantCulture)} mm, sheet {group.Key.StockLabel}",
                group.Count(), SheetPriceOf(kit, panel, group.Key.Price))),
    ];

    // A kit without stock has no prices, and a price of nought would look like a gift.
    private static decimal? PriceOf(KitSpec kit, decimal price) => kit.Stock.Lengths.Count == 0 ? null : price;

    private static decimal? SheetPriceOf(KitSpec kit, PanelPlan panel, decimal price) =>
        KitStock.Sheets(kit.Stock, panel.Material).Count == 0 ? null : price;
}
