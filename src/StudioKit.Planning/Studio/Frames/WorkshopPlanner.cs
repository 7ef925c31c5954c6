using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Cuts and shopping of everything that is built of one pipe and one stock.</summary>
internal static class WorkshopPlanner
{
    /// <summary>The workshop of a studio.</summary>
    /// <param name="inputs">What is built beside pipe and fittings of the frame, and of which kit.</param>
    /// <param name="pieces">Pieces of the frame's pipe; none where no frame is built.</param>
    /// <param name="fittings">Fittings of the frame.</param>
    /// <param name="uprights">What holds the upright sheets.</param>
    /// <param name="services">Cut planners.</param>
    public static Workshop Of(
        HardwareInputs inputs, IReadOnlyList<CutListEntry> pieces, IReadOnlyList<FittingCount> fittings, ValueList<UprightStandPlan> uprights, PlanningServices services)
    {
        var (kit, panel) = (inputs.Kit, inputs.Panel);
        ValueList<SheetPart> all = [.. inputs.Parts, .. uprights.Select(upright => upright.Sheet)];
        ValueList<BuiltHolder> holders = [.. BuiltHolder.Of(kit)];
        var built = inputs with { Parts = all, Holders = holders, Uprights = uprights };
        var (hardware, pipe, sheets) = (HardwarePlanner.Of(built), services.Bars.Plan(BarRequest(kit, pieces, uprights)), SheetCuts.Plan(kit, panel, all, services.Sheets));
        var tools = ToolPlanner.Of(built, hardware);
        return new Workshop
        {
            PipeName = kit.Frame.Pipe.Name,
            FittingsName = kit.Frame.Fittings.Name,
            PipeCuts = pipe,
            SheetParts = all,
            SheetCuts = sheets,
            Shopping = ShoppingList.Of(kit, panel, fittings, pipe, sheets, all, uprights, hardware, tools),
            Currency = kit.Stock.Currency,
            Studios = kit.Stock.Studios,
            BuiltHolders = holders,
            Uprights = uprights,
            Hardware = hardware,
            Tools = tools,
        };
    }

    /// <summary>The workshop of upright sheets where no frame is built; none where there is none.</summary>
    public static Workshop? WithoutFrame(KitSpec kit, PanelPlan panel, IReadOnlyList<UprightPlan> sheets, PlanningServices services)
    {
        var softboxes = SheetParts.Softboxes(kit);
        return Uprights.UprightStandPlanner.Of(kit, sheets, null) is { Count: > 0 } uprights
            ? Of(new HardwareInputs { Kit = kit, Panel = panel, Softboxes = softboxes, Parts = SheetParts.Modifiers(kit, softboxes) }, [], [], uprights, services)
            : null;
    }

    /// <summary>What is cut of a kit's pipe.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="pieces">Pieces of the frame's pipe; none where no frame is built.</param>
    /// <param name="uprights">What holds the upright sheets.</param>
    public static BarCutRequest BarRequest(KitSpec kit, IReadOnlyList<CutListEntry> pieces, ValueList<UprightStandPlan> uprights) => new()
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
