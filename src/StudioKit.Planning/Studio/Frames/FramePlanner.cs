using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Frame and stock of a kit → geometry, cuts and shopping list.</summary>
internal static class FramePlanner
{
    // A clear hole for the M8 screw on the shopping list, medium fit (from memory).
    private static readonly Length FootHole = Length.FromMillimeters(9);

    /// <summary>Why no frame can be drawn for a panel; none where one can.</summary>
    public static FrameObstacle? Obstacle(KitSpec kit, PanelPlan panel) => PipeFrame.Obstacle(FrameDesign.CaseOf(kit, panel));

    /// <summary>Plans the frame for a panel.</summary>
    public static FramePlan Plan(KitSpec kit, PanelPlan panel, PlanningServices services)
    {
        var (design, frame) = Geometry(kit, panel);
        var pieces = CutList.Of(frame, CutRounding.HalfMillimetre);
        var softboxes = SheetParts.Softboxes(kit);
        var parts = SheetParts.Of(kit, panel, frame, softboxes);
        var pipeCuts = services.Bars.Plan(BarRequest(kit, pieces));
        var sheetCuts = SheetCuts.Plan(kit, panel, parts, services.Sheets);
        var fittings = FittingsOf(kit, frame);
        var mass = FrameLoads.FrameMass(kit, frame);
        var lowerFlashes = LowerFlashes.Placed(kit, panel, design, frame);
        var standing = FrameLoads.StandingMass(kit, panel, frame, parts);
        var feet = Feet(kit, frame);
        return new FramePlan
        {
            Geometry = frame,
            PipeName = kit.Frame.Pipe.Name,
            FittingsName = kit.Frame.Fittings.Name,
            Pieces = pieces,
            InchPieces = CutList.Of(frame, CutRounding.SixteenthInch),
            InsertionDepths = InsertionDepths(kit),
            Fittings = fittings,
            SheetParts = parts,
            Softboxes = softboxes,
            BuiltHolders = BuiltHolder.Of(kit),
            LowerFlashes = lowerFlashes,
            Sweep = SheetSweeps.Of(panel, frame),
            Seams = SheetParts.Seams(kit),
            PipeDiameter = kit.Frame.Pipe.OutsideDiameter,
            FootSettings = feet,
            FootHole = frame.Feet.Count > 0 ? FootHole : null,
            FrontClips = EdgeClips.Front(panel, frame),
            RailHeights = RailHeights.Of(frame),
            Studios = kit.Stock.Studios,
            PipeCuts = pipeCuts,
            SheetCuts = sheetCuts,
            Shopping = ShoppingList.Of(kit, panel, frame, pipeCuts, sheetCuts, fittings),
            Currency = kit.Stock.Currency,
            Assembly = AssemblyOrder.Build(kit, frame, softboxes, lowerFlashes, feet),
            PackingDown = AssemblyOrder.TakeApart(kit, frame, pieces),
            StandingMass = standing,
            StructuralChecks = StudioChecks.All(FrameLoads.CaseOf(kit, panel, frame, standing)),
            Wind = FrameLoads.WindOf(kit, panel),
            Ballast = kit.Frame.Ballast,
            Pegs = kit.Frame.Pegs.Count,
            PegHold = FrameLoads.PegHold(kit),
            RestMass = FrameLoads.RestMass(kit, frame),
            SkirtMass = FrameLoads.SkirtMass(kit, parts),
            Mass = mass.Mass,
            MassOrigin = mass.Origin,
        };
    }

    /// <summary>The frame alone, without cuts and lists.</summary>
    /// <remarks>Legs under the middle of the side rails cost two tees and two feet, so they are put in only where they mend a check.</remarks>
    public static (FrameCase Design, FrameResult Frame) Geometry(KitSpec kit, PanelPlan panel)
    {
        var design = FrameDesign.CaseOf(kit, panel);
        var plain = PipeFrame.Generate(design);
        var failing = plain.Feet.Count == 0 ? 0 : Failing(kit, panel, plain);
        if (failing == 0)
        {
            return (design, plain);
        }

        var withLegs = design with { MiddleLegs = true };
        if (PipeFrame.Obstacle(withLegs) is not null)
        {
            return (design, plain);
        }

        var propped = PipeFrame.Generate(withLegs);
        var asGood = propped.Problems.Count + propped.Refused <= plain.Problems.Count + plain.Refused;
        return asGood && Failing(kit, panel, propped) < failing ? (withLegs, propped) : (design, plain);
    }

    private static int Failing(KitSpec kit, PanelPlan panel, FrameResult frame)
    {
        var standing = FrameLoads.StandingMass(kit, panel, frame, SheetParts.Of(kit, panel, frame, []));
        return StudioChecks.All(FrameLoads.CaseOf(kit, panel, frame, standing)).Count(check => !check.Holds && check.Kind is StructuralCheckKind.RailSag or StructuralCheckKind.RailStress);
    }

    private static IReadOnlyList<FootSetting> Feet(KitSpec kit, FrameResult frame)
    {
        if (kit.Site.Downhill is not { } downhill)
        {
            return [];
        }

        var extensions = FootLevelling.Extensions(frame, kit.Site.Slope, downhill);
        return [.. frame.Feet.Select(foot => new FootSetting(foot.Joint, extensions[foot.Joint], extensions[foot.Joint] >= foot.ShortestExtension && extensions[foot.Joint] <= foot.LongestExtension))];
    }

    private static BarCutRequest BarRequest(KitSpec kit, IReadOnlyList<CutListEntry> pieces) => new()
    {
        // A frame with no room for a pipe says so among its problems; there is nothing to cut for it.
        Pieces =
        [
            .. pieces.Where(piece => piece.Rounded > Length.Zero).Select(piece => new BarPiece(piece.Group, piece.Rounded, piece.Count * kit.Stock.Studios)),
            .. BuiltHolder.Of(kit).SelectMany(holder => HolderPieces(holder, kit.Stock.Studios)),
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

    private static Dictionary<FittingKind, Length> InsertionDepths(KitSpec kit)
    {
        var fittings = FrameDesign.CaseOf(kit.Frame.Fittings);
        return Enum.GetValues<FittingKind>().ToDictionary(kind => kind, kind => fittings.Of(kind).SocketDepth - kit.Frame.InsertionGap);
    }

    private static IReadOnlyList<FittingCount> FittingsOf(KitSpec kit, FrameResult frame) =>
        [.. frame.FittingCounts.OrderBy(pair => pair.Key).Select(pair =>
        {
            var (name, spec) = Named(kit.Frame.Fittings, pair.Key);
            return new FittingCount(pair.Key, name, pair.Value, spec.TakeOff, spec.Mass, spec.Price)
            {
                ToPipeEnd = spec.TakeOff + kit.Frame.InsertionGap,
                ToMark = spec.TakeOff + spec.SocketDepth,
            };
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
}
