using StudioKit.Kits;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Cuts of all flat pieces, material by material, joined into one plan.</summary>
internal static class SheetCuts
{
    /// <summary>Plans the cuts for every studio of the batch.</summary>
    public static SheetCutPlan Plan(KitSpec kit, PanelPlan panel, IReadOnlyList<SheetPart> parts, ISheetCutPlanner planner) =>
        Join([.. parts.GroupBy(part => part.Material).SelectMany(alike => Requests(kit, panel, [.. alike])).Select(request => planner.Plan(request))]);

    /// <summary>What is cut from stock sheets, material by material.</summary>
    public static IEnumerable<(string Material, SheetCutRequest Request)> FromStock(KitSpec kit, PanelPlan panel, IReadOnlyList<SheetPart> parts) =>
        from alike in parts.GroupBy(part => part.Material)
        where StockOf(kit, panel, alike.First()).Count > 0
        from request in Requests(kit, panel, [.. alike])
        select (alike.Key, request);

    /// <summary>Stock of a part's material; none where it is bought cut to size.</summary>
    public static IReadOnlyList<StockSheet> StockOf(KitSpec kit, PanelPlan panel, string material)
    {
        var named = material == SheetParts.PanelMaterial(panel) ? panel.Material : material;
        return [.. KitStock.Sheets(kit.Stock, named).Select(sheet => sheet with { Label = $"{material}, {sheet.Label}" })];
    }

    /// <summary>Stock of a part; none where it is bought cut to size.</summary>
    public static IReadOnlyList<StockSheet> StockOf(KitSpec kit, PanelPlan panel, SheetPart part) => part.StockedAs is { } named
        ? [.. KitStock.Sheets(kit.Stock, named).Select(sheet => sheet with { Label = $"{part.Material}, {sheet.Label}" })]
        : StockOf(kit, panel, part.Material);

    private static IEnumerable<SheetCutRequest> Requests(KitSpec kit, PanelPlan panel, IReadOnlyList<SheetPart> parts)
    {
        var stock = StockOf(kit, panel, parts[0]).Select(sheet => sheet with { Sold = Sold(parts[0], SoldForm.Stock, sheet.Width, sheet.Height) }).ToList();
        return stock.Count > 0
            ? [Request(kit, parts, stock)]
            : parts.Select(part => Request(
                kit, [part], [new StockSheet($"{part.Material}, cut to {PlanFormat.Rectangle(part.Width, part.Height)}", part.Width, part.Height) { Sold = Sold(part, SoldForm.CutTo, part.Width, part.Height) }]));
    }

    private static SoldName Sold(SheetPart part, SoldForm form, Length width, Length height) =>
        (part.Sold ?? new SoldName(part.Material, form, [])) with { Form = form, Sizes = [width, height] };

    private static SheetCutRequest Request(KitSpec kit, IReadOnlyList<SheetPart> parts, IReadOnlyList<StockSheet> stock) => new()
    {
        Pieces = [.. parts.Select(part => new SheetPiece(
            part.Label, part.Width, part.Height, part.Count * kit.Stock.Studios, MayTurn: !part.KeepsDirection))],
        Stock = stock,
        Kerf = kit.Stock.SheetKerf,
    };

    private static SheetCutPlan Join(IReadOnlyList<SheetCutPlan> plans) => plans.Count == 1 ? plans[0] : new SheetCutPlan
    {
        Sheets = [.. plans.SelectMany(plan => plan.Sheets).Select((sheet, i) => sheet with { Number = i + 1 })],
        Uncut = [.. plans.SelectMany(plan => plan.Uncut)],
        Proof = Join([.. plans.Select(plan => plan.Proof)]),
        Offcuts = [.. plans.SelectMany(plan => plan.Offcuts)],
        StockForNextTime = [.. plans.SelectMany(plan => plan.StockForNextTime)],
    };

    // Materials don't share sheets, so the best plan of all is the best plan of each.
    private static CutProof Join(IReadOnlyList<CutProof> proofs) => new(
        proofs.Any(proof => proof.Objective == CutObjective.Cost) ? CutObjective.Cost : CutObjective.Count,
        proofs.Sum(proof => proof.Value),
        proofs.Sum(proof => proof.LowerBound),
        proofs.All(proof => proof.Complete),
        string.Join("; ", proofs.Select(proof => proof.Method).Distinct(StringComparer.Ordinal)));
}
