using StudioKit.Physics.Structure.Frames.Layout;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Refuses a frame case outside its documented ranges.</summary>
internal static class FrameCaseCheck
{
    private const double SteepestSlope = Math.PI / 4;

    public static void Check(FrameCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        Guard.Positive(design.PanelWidth.Meters, nameof(design.PanelWidth));
        Guard.Positive(design.PanelDepth.Meters, nameof(design.PanelDepth));
        Guard.Positive(design.Height.Meters, nameof(design.Height));
        Guard.Positive(design.LongestPiece.Meters, nameof(design.LongestPiece));
        Guard.NonNegative(design.Pad.Meters, nameof(design.Pad));
        Guard.NonNegative(design.EdgeClearance.Meters, nameof(design.EdgeClearance));
        Guard.NonNegative(design.ShortestFoot.Meters, nameof(design.ShortestFoot));
        Guard.NonNegative(design.FootTravel.Meters, nameof(design.FootTravel));
        Guard.Between(design.Slope.Radians, 0, SteepestSlope, nameof(design.Slope));
        PipeSection.Area(design.Pipe.OutsideDiameter.Meters, design.Pipe.Wall.Meters);
        CheckSweep(design);
        CheckCradles(design.Cradles);
        CheckFittings(design);
        CheckRoom(design);
    }

    private static void CheckSweep(FrameCase design)
    {
        if (design.Shape != FrameShape.SweptTable)
        {
            return;
        }

        Guard.Positive(design.SweepRadius?.Meters ?? double.NaN, nameof(design.SweepRadius));
        Guard.Between(Guard.Positive(design.SweepAngle.Degrees, nameof(design.SweepAngle)), 0, 90, nameof(design.SweepAngle));
    }

    private static void CheckCradles(IReadOnlyList<FlashCradleCase> cradles)
    {
        foreach (var cradle in cradles)
        {
            Guard.Positive(cradle.BelowPanel.Meters, nameof(cradle.BelowPanel));
            Guard.NonNegative(cradle.StandOff.Meters, nameof(cradle.StandOff));
            Guard.Finite(cradle.OffsetRight.Meters, nameof(cradle.OffsetRight));
            Guard.Finite(cradle.OffsetBack.Meters, nameof(cradle.OffsetBack));
            Guard.NonNegative(cradle.HeadWidth.Meters, nameof(cradle.HeadWidth));
            Guard.NonNegative(cradle.HeadHeight.Meters, nameof(cradle.HeadHeight));
        }
    }

    private static void CheckFittings(FrameCase design)
    {
        Guard.NonNegative(design.InsertionGap.Meters, nameof(design.InsertionGap));
        foreach (var kind in Enum.GetValues<FittingKind>())
        {
            var fitting = design.Fittings.Of(kind);
            Guard.NonNegative(fitting.TakeOff.Meters, nameof(fitting.TakeOff));
            Guard.Positive(fitting.SocketDepth.Meters - design.InsertionGap.Meters, nameof(fitting.SocketDepth));
        }
    }

    /// <summary>What leaves no room for the rails; none where there is room.</summary>
    public static FrameObstacle? Obstacle(FrameCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var rails = 2 * design.Pipe.OutsideDiameter;
        if (design.PanelWidth <= rails || design.PanelDepth <= rails)
        {
            return new FrameObstacle(FrameObstacleKind.NarrowPanel, rails);
        }

        var measures = new FrameMeasures(design);
        return measures.RailUp <= 0 ? new FrameObstacle(FrameObstacleKind.FittingsUnderGround, Length.FromMeters(-measures.RailUp))
            : !new FrameLayout(measures).LayOut().Skeleton.CanBeJoined ? new FrameObstacle(FrameObstacleKind.CrowdedJoint, Length.Zero)
            : null;
    }

    // Rails need a centre line at all before anything can be said about their pieces.
    private static void CheckRoom(FrameCase design)
    {
        var diameter = design.Pipe.OutsideDiameter.Meters;
        Guard.Positive(design.PanelWidth.Meters - (2 * diameter), nameof(design.PanelWidth));
        Guard.Positive(design.PanelDepth.Meters - (2 * diameter), nameof(design.PanelDepth));
        Guard.Positive(new FrameMeasures(design).RailUp, nameof(design.Height));
    }
}
