using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>What to buy or take from the shelf for every studio of the batch.</summary>
internal static class ShoppingList
{
    /// <summary>The list, in the order of the shop's aisles: pipe, fittings, small parts, sheets.</summary>
    public static IReadOnlyList<ShoppingLine> Of(
        KitSpec kit, PanelPlan panel, (FrameResult Frame, IReadOnlyList<FittingCount> Fittings)? built, BarCutPlan pipe, SheetCutPlan sheets, IReadOnlyList<UprightStandPlan> uprights) =>
    [
        .. pipe.Bars
            .GroupBy(bar => (bar.StockLabel, bar.Price))
            .Select(bars => new ShoppingLine($"{kit.Frame.Pipe.Name}, length of {bars.Key.StockLabel}", bars.Count(), PriceOf(kit, bars.Key.Price))),
        .. (built?.Fittings ?? []).Select(fitting => new ShoppingLine($"{kit.Frame.Fittings.Name}: {fitting.Name}", fitting.Count * kit.Stock.Studios, fitting.PriceEach)),
        .. built is { } frame ? SmallParts(kit, frame.Frame).Where(line => line.Count > 0) : [],
        .. UprightShopping.Lines(kit, uprights).Where(line => line.Count > 0),
        .. kit.Covers.Where(cover => cover.Price is not null).Select(cover => new ShoppingLine($"{cover.Name}: {PlanFormat.Box(cover.Width, cover.Depth, cover.Height)} inside", kit.Stock.Studios, cover.Price)),
        .. HolderLines(kit).Where(line => line.Count > 0),
        .. sheets.Sheets
            .GroupBy(sheet => (sheet.StockLabel, sheet.Price))
            .Select(group => new ShoppingLine($"sheet of {group.Key.StockLabel}", group.Count(), SheetPrice(kit, panel, uprights, group.Key.StockLabel, group.Key.Price))),
        .. kit.Triggers.Where(trigger => trigger.Price is not null).Select(trigger => new ShoppingLine(trigger.Name, trigger.Count * kit.Stock.Studios, trigger.Price)),
        .. kit.Shelters.Where(shelter => shelter.Price is not null).Select(shelter => new ShoppingLine($"{shelter.Name}, {PlanFormat.Rectangle(shelter.Width, shelter.Height)}", kit.Stock.Studios, shelter.Price)),
        .. kit.Supports.Where(support => support.Price is not null).Select(support => new ShoppingLine(support.Name, kit.Stock.Studios, support.Price)),
    ];

    private static IEnumerable<ShoppingLine> SmallParts(KitSpec kit, FrameResult frame)
    {
        var (stock, points) = (kit.Stock, frame.Ledge.ClipPoints.Count);
        yield return new ShoppingLine("foot: M8 screw, two nuts, rubber tip", frame.Feet.Count * stock.Studios, stock.FootPrice);
        yield return new ShoppingLine("pin for a pulled joint, with its cord", PinCount(frame) * stock.Studios, stock.PinPrice);
        yield return new ShoppingLine("clip that holds the panel to a rail", points * stock.Studios, stock.ClipPrice);
        yield return new ShoppingLine(StripsToBuy.Item(frame.Ledge), StripsToBuy.MetresToBuy(frame.Ledge, stock.Studios), stock.PadPrice);
        yield return new ShoppingLine("ground peg", kit.Frame.Pegs.Count * stock.Studios, stock.PegPrice);
    }

    // Bought as they are; of those that are built what the frame's own lines leave out.
    private static IEnumerable<ShoppingLine> HolderLines(KitSpec kit)
    {
        var (studios, fittings, built) = (kit.Stock.Studios, kit.Frame.Fittings, BuiltHolder.Of(kit));
        foreach (var holder in kit.Holders.Where(holder => holder is { IsCarried: true, Built: false, Kind: not HolderKind.Ground }))
        {
            yield return new ShoppingLine($"{holder.Name}, holds a flash", studios, holder.Price);
        }

        foreach (var holder in built)
        {
            yield return new ShoppingLine($"{fittings.Name}: coupling, for {holder.Holder}", holder.Couplings * studios, fittings.Coupling.Price);
            yield return new ShoppingLine($"{fittings.Name}: tee, for {holder.Holder}", holder.Tees * studios, fittings.Tee.Price);
            yield return new ShoppingLine($"clip from pipe to pipe, for {holder.Holder}", holder.Clips * studios, kit.Stock.ClipPrice);
            yield return new ShoppingLine($"ground peg, for {holder.Holder}", holder.OnPeg ? studios : 0, kit.Stock.PegPrice);
            yield return new ShoppingLine($"ball joint or clip for a flash, for {holder.Holder}", studios, null);
        }
    }

    private static int PinCount(FrameResult frame) =>
        frame.Joints.Where(joint => joint.Pinned).Sum(joint => joint.Ports.Count(port => port.Member is not null));

    // A kit without stock has no prices, and a price of nought would look like a gift.
    private static decimal? PriceOf(KitSpec kit, decimal price) => kit.Stock.Lengths.Count == 0 && price == 0 && kit.Stock.Offcuts.Count == 0 ? null : price;

    private static decimal? SheetPrice(KitSpec kit, PanelPlan panel, IReadOnlyList<UprightStandPlan> uprights, string label, decimal price) =>
        kit.Stock.Sheets.Select(sheet => sheet.Material).Append(panel.Material).Distinct()
            .Select(material => material == panel.Material ? SheetParts.PanelMaterial(panel) : material)
            .SelectMany(material => SheetCuts.StockOf(kit, panel, material))
            .Concat(uprights.SelectMany(upright => SheetCuts.StockOf(kit, panel, upright.Sheet)))
            .Any(sheet => sheet.Label == label) ? price : null;
}
