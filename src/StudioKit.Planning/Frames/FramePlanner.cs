using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Frames;

/// <summary>Frame and stock of a kit → geometry, cuts and shopping list.</summary>
internal static class FramePlanner
{
    // Longest piece where the kit has no bag: what lies across a usual 60 l backpack (common practice, no source).
    private static readonly Length UsualLongestPiece = Length.FromMillimeters(600);

    // A head on a clamp stands about so far over its rail (common practice, no source).
    private static readonly Length HeadOverRail = Length.FromMillimeters(60);

    /// <summary>Plans the frame for a panel.</summary>
    public static FramePlan Plan(KitSpec kit, PanelPlan panel, PlanningServices services)
    {
        var frame = PipeFrame.Generate(CaseOf(kit, panel));
        var pieces = CutList.Of(frame, CutRounding.HalfMillimetre);
        var pipeCuts = services.Bars.Plan(new BarCutRequest
        {
            Pieces = [.. pieces.Select(piece => new BarPiece(piece.Group, piece.Rounded, piece.Count))],
            Stock = KitStock.Bars(kit.Stock),
            Kerf = kit.Stock.Kerf,
            Trim = kit.Stock.Trim,
        });
        var sheetCuts = services.Sheets.Plan(SheetRequest(kit, panel, frame));
        var fittings = FittingsOf(kit.Frame.Fittings, frame);
        return new FramePlan
        {
            Geometry = frame,
            PipeName = kit.Frame.Pipe.Name,
            FittingsName = kit.Frame.Fittings.Name,
            Pieces = pieces,
            Fittings = fittings,
            PipeCuts = pipeCuts,
            SheetCuts = sheetCuts,
            Shopping = ShoppingList.Of(kit, panel, pipeCuts, sheetCuts, fittings),
            Currency = kit.Stock.Currency,
            Mass = kit.Frame.Mass ?? MassOf(kit.Frame.Pipe, pieces, fittings),
            MassOrigin = kit.Frame.Mass is null ? MassOrigin.FromGeometry : MassOrigin.Weighed,
        };
    }

    /// <summary>The longest piece that the pack takes.</summary>
    public static Length LongestPiece(KitSpec kit) =>
        kit.Frame.LongestPiece
        ?? (kit.Pack.Bags.Count > 0 ? kit.Pack.Bags.Select(bag => bag.InsideLength).Max() : UsualLongestPiece);

    private static FrameCase CaseOf(KitSpec kit, PanelPlan panel) => new()
    {
        Shape = kit.Frame.Kind switch
        {
            FrameKind.SweptTable => FrameShape.SweptTable,
            FrameKind.LowGround => FrameShape.LowGround,
            _ => FrameShape.Table,
        },
        PanelWidth = panel.Width,
        PanelDepth = panel.Depth,
        Height = kit.Frame.Height,
        SweepRadius = kit.Panel.SweepRadius,
        Cradle = CradleOf(kit),
        LongestPiece = LongestPiece(kit),
        Pipe = PipeOf(kit.Frame.Pipe),
        Fittings = FittingSetOf(kit.Frame.Fittings),
        InsertionGap = kit.Frame.InsertionGap,
        Slope = kit.Site.Slope,
    };

    // A flash that would stand lower than its own height over the ground needs no rail: it lies on the ground.
    private static FlashCradleCase? CradleOf(KitSpec kit)
    {
        var below = kit.SetUps.SelectMany(setUp => setUp.Lights).FirstOrDefault(light => light.Role == LightRole.Below);
        return below is null || below.Distance + HeadOverRail + Length.FromMillimeters(40) >= kit.Frame.Height
            ? null
            : new FlashCradleCase(below.Distance, below.OffsetRight, below.OffsetBack, HeadOverRail);
    }

    /// <summary>A kit's pipe as the structure calculations want it.</summary>
    public static Pipe PipeOf(PipeSpec pipe) => new(
        pipe.OutsideDiameter, pipe.Wall, pipe.Density, pipe.YoungsModulus, pipe.Strength, pipe.ThermalExpansion, pipe.SoftensLikePvc, pipe.MassPerLength);

    private static FittingSet FittingSetOf(FittingsSpec fittings) => new(
        FittingOf(fittings.Elbow), FittingOf(fittings.Tee), FittingOf(fittings.Cross),
        FittingOf(fittings.Corner), FittingOf(fittings.Coupling), FittingOf(fittings.Cap));

    private static Fitting FittingOf(FittingSpec fitting) => new(fitting.TakeOff, fitting.SocketDepth, fitting.Mass);

    private static IReadOnlyList<FittingCount> FittingsOf(FittingsSpec family, FrameResult frame) =>
        [.. frame.FittingCounts.OrderBy(pair => pair.Key).Select(pair =>
        {
            var (name, spec) = Named(family, pair.Key);
            return new FittingCount(pair.Key, name, pair.Value, spec.TakeOff, spec.Mass, spec.Price);
        })];

    private static (string Name, FittingSpec Spec) Named(FittingsSpec family, FittingKind kind) => kind switch
    {
        FittingKind.Elbow => ("elbow 90°", family.Elbow),
        FittingKind.Tee => ("tee", family.Tee),
        FittingKind.Cross => ("cross", family.Cross),
        FittingKind.Corner => ("three-way corner", family.Corner),
        FittingKind.Coupling => ("coupling", family.Coupling),
        _ => ("end cap", family.Cap),
    };

    private static SheetCutRequest SheetRequest(KitSpec kit, PanelPlan panel, FrameResult frame)
    {
        var stock = KitStock.Sheets(kit.Stock, panel.Material);
        return new SheetCutRequest
        {
            Pieces = [new SheetPiece("panel", panel.Width, frame.SheetLength)],
            Stock = stock.Count > 0 ? stock : [new StockSheet($"cut to size, {PlanFormat.Rectangle(panel.Width, frame.SheetLength)}", panel.Width, frame.SheetLength)],
            Kerf = kit.Stock.SheetKerf,
        };
    }

    private static Mass MassOf(PipeSpec pipe, IReadOnlyList<CutListEntry> pieces, IReadOnlyList<FittingCount> fittings)
    {
        var length = pieces.Sum(piece => piece.Rounded.Meters * piece.Count);
        var perMetre = pipe.MassPerLength?.KilogramsPerMeter
            ?? PipeSection.MassPerLength(pipe.OutsideDiameter.Meters, pipe.Wall.Meters, pipe.Density.KilogramsPerCubicMeter);
        return Mass.FromKilograms((length * perMetre) + fittings.Sum(fitting => fitting.MassEach.Kilograms * fitting.Count));
    }
}
