using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>What to buy or take from the shelf for every studio of the batch.</summary>
internal static class ShoppingList
{
    /// <summary>The list, in the order of the shop's aisles: pipe, fittings, small parts, sheets; then what is looked for at home, and tools.</summary>
    public static IReadOnlyList<ShoppingLine> Of(
        KitSpec kit, PanelPlan panel, IReadOnlyList<FittingCount> fittings, BarCutPlan pipe, SheetCutPlan sheets, IReadOnlyList<SheetPart> parts, IReadOnlyList<UprightStandPlan> uprights,
        IReadOnlyList<HardwareLine> hardware, IReadOnlyList<ToolLine> tools) =>
    [
        .. pipe.Bars
            .GroupBy(bar => (bar.StockLabel, bar.Price))
            .Select(bars => Bar(kit, bars.First(), bars.Count())),
        .. fittings.Select(fitting => new ShoppingLine($"{kit.Frame.Fittings.Name}: {fitting.Name}", fitting.Count * kit.Stock.Studios, fitting.PriceEach)),
        .. HolderFittings(kit).Where(line => line.Count > 0),
        .. UprightFittings(kit, uprights),
        .. hardware.Where(line => !line.IsFromTheHouse).Select(line => Part(kit, line)),
        .. kit.Covers.Where(cover => cover.Price is not null).Select(cover => new ShoppingLine(cover.Name, kit.Stock.Studios, cover.Price) { Size = ShoppingSize.Inside, Sizes = [cover.Width, cover.Depth, cover.Height] }),
        .. kit.Holders.Where(holder => holder is { IsCarried: true, Built: false, Kind: not HolderKind.Ground }).Select(holder => new ShoppingLine($"{holder.Name}, holds a flash", kit.Stock.Studios, holder.Price)),
        .. sheets.Sheets
            .GroupBy(sheet => (sheet.StockLabel, sheet.Price))
            .Select(group => Sheet(group.First(), group.Count(), IsStock(kit, panel, uprights, group.Key.StockLabel), parts)),
        .. kit.Triggers.Where(trigger => trigger.Price is not null).Select(trigger => new ShoppingLine(trigger.Name, trigger.Count * kit.Stock.Studios, trigger.Price)),
        .. kit.Shelters.Where(shelter => shelter.Price is not null).Select(shelter => new ShoppingLine(shelter.Name, kit.Stock.Studios, shelter.Price) { Size = ShoppingSize.Sides, Sizes = [shelter.Width, shelter.Height] }),
        .. kit.Supports.Where(support => support.Price is not null).Select(support => new ShoppingLine(support.Name, kit.Stock.Studios, support.Price)),
        .. hardware.Where(line => line.IsFromTheHouse).Select(line => Part(kit, line)),
        .. tools.Select(tool => new ShoppingLine("", tool.Count, null) { Tool = tool }),
    ];

    private static ShoppingLine Part(KitSpec kit, HardwareLine line) => new("", line.ToBuy(kit.Stock.Studios), line.PriceEach) { Hardware = line };

    // What is in the kit as an offcut is looked for among those.
    private static ShoppingLine Bar(KitSpec kit, CutBar bar, int count) =>
        new(kit.Stock.Offcuts.Contains(bar.StockLength) && bar.Price == 0 ? $"{kit.Frame.Pipe.Name}, offcut on hand" : kit.Frame.Pipe.Name, count, PriceOf(kit, bar.Price)) { Size = ShoppingSize.Bar, Sizes = [bar.StockLength] };

    // What is no stock is cut to size by the shop, at a price that the kit does not know.
    private static ShoppingLine Sheet(CutSheet sheet, int count, bool isStock, IReadOnlyList<SheetPart> parts)
    {
        var part = parts.First(part => sheet.Panels.Any(panel => panel.Label == part.Label));
        return new($"sheet of {part.Sold?.Name ?? part.Material}", count, isStock ? sheet.Price : null)
        {
            Thickness = part.Sold?.Thickness,
            Size = isStock ? ShoppingSize.Sides : ShoppingSize.CutTo,
            Sizes = [sheet.StockWidth, sheet.StockHeight],
        };
    }

    private static IEnumerable<ShoppingLine> HolderFittings(KitSpec kit)
    {
        var (studios, fittings) = (kit.Stock.Studios, kit.Frame.Fittings);
        foreach (var holder in BuiltHolder.Of(kit))
        {
            yield return new ShoppingLine($"{fittings.Name}: coupling, for {holder.Holder}", holder.Couplings * studios, fittings.Coupling.Price);
            yield return new ShoppingLine($"{fittings.Name}: tee, for {holder.Holder}", holder.Tees * studios, fittings.Tee.Price);
        }
    }

    private static IEnumerable<ShoppingLine> UprightFittings(KitSpec kit, IEnumerable<UprightStandPlan> uprights) =>
        from upright in uprights
        from fitting in upright.Fittings
        where fitting.Count > 0
        select new ShoppingLine($"{kit.Frame.Fittings.Name}: {fitting.Name}, for {upright.Name}", fitting.Count * kit.Stock.Studios, fitting.PriceEach);

    // A kit without stock has no prices, and a price of nought would look like a gift.
    private static decimal? PriceOf(KitSpec kit, decimal price) => kit.Stock.Lengths.Count == 0 && price == 0 && kit.Stock.Offcuts.Count == 0 ? null : price;

    private static bool IsStock(KitSpec kit, PanelPlan panel, IReadOnlyList<UprightStandPlan> uprights, string label) =>
        kit.Stock.Sheets.Select(sheet => sheet.Material).Append(panel.Material).Distinct()
            .Select(material => material == panel.Material ? SheetParts.PanelMaterial(panel) : material)
            .SelectMany(material => SheetCuts.StockOf(kit, panel, material))
            .Concat(uprights.SelectMany(upright => SheetCuts.StockOf(kit, panel, upright.Sheet)))
            .Any(sheet => sheet.Label == label);
}
