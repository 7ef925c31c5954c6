using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Frame and stock of a kit → geometry, cuts and shopping list.</summary>
internal static class FramePlanner
{
    /// <summary>Why no frame can be drawn for a panel; none where one can.</summary>
    public static FrameObstacle? Obstacle(KitSpec kit, PanelPlan panel) => PipeFrame.Obstacle(FrameDesign.CaseOf(kit, panel));

    /// <summary>Plans the frame for a panel.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="services">Cut planners.</param>
    /// <param name="sheets">Its upright sheets; none where it has none.</param>
    public static FramePlan Plan(KitSpec kit, PanelPlan panel, PlanningServices services, IReadOnlyList<UprightPlan>? sheets = null)
    {
        var (design, frame) = Geometry(kit, panel);
        var pieces = CutList.Of(frame);
        var softboxes = SheetParts.Softboxes(kit);
        var parts = SheetParts.Of(kit, panel, frame, softboxes);
        var fittings = FittingsOf(kit, frame);
        var mass = FrameLoads.FrameMass(kit, frame);
        var lowerFlashes = LowerFlashes.Placed(kit, panel, design, frame);
        var standing = FrameLoads.StandingMass(kit, panel, frame, parts);
        var feet = Feet(kit, frame);
        var uprights = UprightStandPlanner.Of(kit, sheets ?? [], frame);
        var sail = FrameSails.Of(uprights);
        var checks = StudioChecks.All(FrameLoads.WithSail(FrameLoads.CaseOf(kit, panel, frame, standing), kit, panel, sail));
        var assembly = AssemblyOrder.Build(kit, panel, frame, softboxes, lowerFlashes, feet);
        var built = new HardwareInputs { Kit = kit, Panel = panel, Frame = frame, LowerFlashes = lowerFlashes, Softboxes = softboxes, Parts = parts };
        var workshop = WorkshopPlanner.Of(built, pieces, fittings, FrameSails.Limited(uprights, checks), services);
        return new FramePlan
        {
            Geometry = frame,
            Design = design,
            Pieces = pieces,
            InsertionDepths = InsertionDepths(kit),
            Fittings = fittings,
            Softboxes = softboxes,
            LowerFlashes = lowerFlashes,
            Sweep = SheetSweeps.Of(panel, frame),
            Seams = SheetParts.Seams(kit),
            PipeDiameter = kit.Frame.Pipe.OutsideDiameter,
            FootSettings = feet,
            FootHole = workshop.Hardware.FirstOrDefault(line => line.Kind == HardwareKind.Foot)?.Hole,
            FrontClips = EdgeClips.Front(panel, frame),
            Heights = FrameHeights.Of(frame, lowerFlashes),
            Workshop = workshop,
            Assembly = assembly,
            PackingDown = AssemblyOrder.TakeApart(kit, frame, assembly, pieces),
            StandingMass = standing,
            StructuralChecks = checks,
            Wind = FrameLoads.WindOf(kit, panel, sail),
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
        return StudioChecks.OfRails(FrameLoads.CaseOf(kit, panel, frame, standing)).Count(check => !check.Holds);
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

    private static Dictionary<FittingKind, Length> InsertionDepths(KitSpec kit)
    {
        var fittings = FrameDesign.CaseOf(kit.Frame.Fittings);
        return Enum.GetValues<FittingKind>().ToDictionary(kind => kind, kind => fittings.Of(kind).SocketDepth - kit.Frame.InsertionGap);
    }

    private static IReadOnlyList<FittingCount> FittingsOf(KitSpec kit, FrameResult frame) =>
        [.. frame.FittingCounts.OrderBy(pair => pair.Key).Select(pair => FittingCounts.Of(kit, pair.Key, pair.Value))];
}
