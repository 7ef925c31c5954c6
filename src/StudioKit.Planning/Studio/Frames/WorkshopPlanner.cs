using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Cuts and shopping of everything that is built of one pipe and one stock.</summary>
internal static class WorkshopPlanner
{
    /// <summary>The workshop of a studio.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="built">The frame with its pieces and fittings; none where none is built.</param>
    /// <param name="parts">Flat pieces of panel, skirts and modifiers.</param>
    /// <param name="uprights">What holds the upright sheets.</param>
    /// <param name="services">Cut planners.</param>
    public static Workshop Of(
        KitSpec kit, PanelPlan panel, (FrameResult Frame, IReadOnlyList<CutListEntry> Pieces, IReadOnlyList<FittingCount> Fittings)? built, IReadOnlyList<SheetPart> parts,
        ValueList<UprightStandPlan> uprights, PlanningServices services)
    {
        IReadOnlyList<SheetPart> all = [.. parts, .. uprights.Select(upright => upright.Sheet)];
        var pipe = services.Bars.Plan(BarRequest(kit, built?.Pieces ?? [], uprights));
        var sheets = SheetCuts.Plan(kit, panel, all, services.Sheets);
        return new Workshop
        {
            PipeName = kit.Frame.Pipe.Name,
            FittingsName = kit.Frame.Fittings.Name,
            PipeCuts = pipe,
            SheetParts = all,
            SheetCuts = sheets,
            Shopping = ShoppingList.Of(kit, panel, built is { } frame ? (frame.Frame, frame.Fittings) : null, pipe, sheets, uprights),
            Currency = kit.Stock.Currency,
            Studios = kit.Stock.Studios,
            BuiltHolders = [.. BuiltHolder.Of(kit)],
            Uprights = uprights,
        };
    }

    /// <summary>The workshop of upright sheets where no frame is built; none where there is none.</summary>
    public static Workshop? WithoutFrame(KitSpec kit, PanelPlan panel, IReadOnlyList<UprightPlan> sheets, PlanningServices services) =>
        Uprights.UprightStandPlanner.Of(kit, sheets, null) is { Count: > 0 } uprights ? Of(kit, panel, null, SheetParts.Modifiers(kit, SheetParts.Softboxes(kit)), uprights, services) : null;

    private static BarCutRequest BarRequest(KitSpec kit, IReadOnlyList<CutListEntry> pieces, ValueList<UprightStandPlan> uprights) => new()
    {
        // A frame with no room for a pipe says so among its problems; there is nothing to cut for it.
        Pieces =
        [
            .. pieces.Where(piece => piece.Rounded > UnitsNet.Length.Zero).Select(piece => new BarPiece(piece.Group, piece.Rounded, piece.Count * kit.Stock.Studios)),
            .. BuiltHolder.Of(kit).SelectMany(holder => HolderPieces(holder, kit.Stock.Studios)),
            .. uprights.SelectMany(upright => upright.Pieces).Where(piece => piece.Cut > UnitsNet.Length.Zero).Select(piece => new BarPiece(piece.Label, piece.Cut, piece.Count * kit.Stock.Studios)),
        ],
        Stock = KitStock.Bars(kit.Stock),
        Kerf = kit.Stock.Kerf,
        Trim = kit.Stock.Trim,
    };

    private static IEnumerable<BarPiece> HolderPieces(BuiltHolder holder, int studios)
    {
        if (holder.Poles > 0)
        {
            yield return new BarPiece($"pole of {holder.Holder}", holder.PoleLength, holder.Poles * studios);
        }

        if (holder.Arms > 0)
        {
            yield return new BarPiece($"{(holder.OnPeg ? "boom" : "arm")} of {holder.Holder}", holder.ArmLength, holder.Arms * studios);
        }
    }
}
