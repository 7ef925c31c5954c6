using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>A kit's frame as the structure calculations want it.</summary>
internal static class FrameDesign
{
    // Longest piece where the kit has no bag: what lies across a usual 60 l backpack (common practice, no source).
    private static readonly Length UsualLongestPiece = Length.FromMillimeters(600);

    /// <summary>The longest piece that the pack takes.</summary>
    public static Length LongestPiece(KitSpec kit) =>
        kit.Frame.LongestPiece
        ?? (kit.Pack.Bags.Count > 0 ? kit.Pack.Bags.Select(bag => bag.InsideLength).Max() : UsualLongestPiece);

    /// <summary>What the frame is generated from.</summary>
    public static FrameCase CaseOf(KitSpec kit, PanelPlan panel) => new()
    {
        Shape = kit.Frame.Kind switch
        {
            FrameKind.SweptTable => FrameShape.SweptTable,
            FrameKind.LowGround => FrameShape.LowGround,
            _ => FrameShape.Table,
        },
        PanelWidth = panel.Width,
        PanelDepth = panel.FlatDepth,
        Height = kit.Frame.Height,
        SweepRadius = panel.SweepRadius ?? (kit.Panel.Thickness * kit.Panel.ColdBendRatio),
        SweepAngle = SweepAngle(panel),
        Cradles = LowerFlashes.Cradles(kit),
        LongestPiece = LongestPiece(kit),
        Pipe = PipeOf(kit.Frame.Pipe),
        Fittings = CaseOf(kit.Frame.Fittings),
        InsertionGap = kit.Frame.InsertionGap,
        Slope = kit.Site.Slope,
        Seat = kit.Frame.PanelSeat,
        Rests = kit.Frame.PanelRests,
        Pad = kit.Frame.Pad,
        EdgeClearance = kit.Frame.EdgeClearance,
        Stretchers = kit.Frame.Stretchers,
        JointStiffness = kit.Frame.JointStiffness,
        FootTravel = kit.Frame.FootTravel,
    };

    /// <summary>A kit's pipe as the structure calculations want it.</summary>
    public static Pipe PipeOf(PipeSpec pipe) => new(
        pipe.OutsideDiameter, pipe.Wall, pipe.Density, pipe.YoungsModulus, pipe.Strength, pipe.ThermalExpansion, pipe.SoftensLikePvc, pipe.MassPerLength);

    // A quarter turn is the most that a sheet can stand up; the check of the panel's size names a sheet that is too long.
    private static Angle SweepAngle(PanelPlan panel) => panel.SweepRadius is { } radius && panel.SweptLength > Length.Zero
        ? Angle.FromRadians(Math.Min(panel.SweptLength / radius, Math.PI / 2))
        : Angle.FromDegrees(90);

    /// <summary>A kit's fittings as the structure calculations want them.</summary>
    public static FittingSet CaseOf(FittingsSpec fittings) => new(
        FittingOf(fittings.Elbow), FittingOf(fittings.Tee), FittingOf(fittings.Cross),
        FittingOf(fittings.Corner), FittingOf(fittings.Coupling), FittingOf(fittings.Cap));

    private static Fitting FittingOf(FittingSpec fitting) => new(fitting.TakeOff, fitting.SocketDepth, fitting.Mass);
}
