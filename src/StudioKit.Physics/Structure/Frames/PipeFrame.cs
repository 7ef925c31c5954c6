using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure.Frames.Layout;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Generates a pipe frame: every fitting in its place and every pipe with its cut length.</summary>
public static class PipeFrame
{
    private const double ClipSpacing = 0.3;
    private const double LedgeLip = 0.015;

    /// <summary>Why a frame cannot even be drawn: a panel narrower than its rails, or a height lower than its fittings. None where it can.</summary>
    /// <param name="design">The frame as <see cref="Generate"/> takes it.</param>
    [Source("Derived", "centre lines of rails within panel and height")]
    public static FrameObstacle? Obstacle(FrameCase design) => FrameCaseCheck.Obstacle(design);

    /// <summary>Generates the frame for a panel.</summary>
    /// <param name="design">Panel, height, sweep, flash, pipe, fittings, pack and ground.</param>
    /// <returns>The frame; what cannot be built or packed is named among its problems.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that <see cref="FrameCase"/> gives.</exception>
    /// <remarks>
    /// cut = centre line − take-offs − insertion gaps. A member longer than the pack takes is split into the fewest equal pieces
    /// with couplings between. All joints are dry, so that the frame packs.
    /// </remarks>
    [Source("ModernPlumbing", "laying length and take-off")]
    public static FrameResult Generate(FrameCase design)
    {
        FrameCaseCheck.Check(design);
        var measures = new FrameMeasures(design);
        var layout = new FrameLayout(measures).LayOut();
        MemberSplit.SplitAll(layout.Skeleton, design);
        var members = MemberCuts.Of(layout.Skeleton, design);

        return new FrameResult(
            design.Shape,
            Joints(layout.Skeleton, members),
            members,
            Feet(layout, measures),
            Ledge(layout, measures, members),
            Cradles(layout),
            layout.Flat ? Length.FromMeters(PanelUp(layout, measures)) : design.Height,
            Length.FromMeters(measures.SheetLength),
            [.. layout.Problems, .. MemberFit.Problems(members, layout.Skeleton, design)],
            [.. Caveats(layout, measures)]);
    }

    private static double PanelUp(FrameLayout layout, FrameMeasures measures) =>
        !layout.Flat ? measures.Height : measures.Seat == PanelSeat.OverRails ? layout.RailUp + measures.Lift : layout.RailUp;

    private static IReadOnlyList<FrameJoint> Joints(Skeleton skeleton, IReadOnlyList<FrameMember> members) =>
        [.. skeleton.Joints.Select((position, i) => new FrameJoint(
            JointLabel.For(i),
            skeleton.KindOf(i),
            position,
            [.. skeleton.PortsOf(i).Select(port => new FramePort(port.Direction, port.Line < 0 ? null : members[port.Line].Label))],
            skeleton.KindOf(i) is FittingKind.Corner or FittingKind.Coupling or FittingKind.Elbow))];

    private static IReadOnlyList<FrameFoot> Feet(FrameLayout layout, FrameMeasures measures) =>
        [.. layout.Feet.Select(joint => new FrameFoot(
            JointLabel.For(joint),
            layout.Skeleton.Joints[joint] with { Up = 0 },
            Length.FromMeters(measures.FootUp),
            Length.FromMeters(Math.Max(0, measures.FootUp - (measures.UsableTravel / 2))),
            Length.FromMeters(measures.FootUp + (measures.UsableTravel / 2))))];

    private static PanelLedge Ledge(FrameLayout layout, FrameMeasures measures, IReadOnlyList<FrameMember> members) => new(
        measures.Seat,
        measures.Seat == PanelSeat.OverRails ? measures.Design.Pipe.OutsideDiameter : Length.FromMeters(LedgeLip),
        measures.Seat == PanelSeat.OverRails ? measures.Design.Pad : Length.Zero,
        measures.Design.EdgeClearance,
        [.. layout.Skeleton.Lines.Where(CarriesPanel).SelectMany(line => Clips(layout.Skeleton, line))])
    {
        Rests = RestStrips.Of(layout.Skeleton, members, measures),
    };

    private static bool CarriesPanel(SkeletonLine line) =>
        line.Role is FrameMemberRole.CrossRail or FrameMemberRole.SweepRail;

    private static IEnumerable<FramePoint> Clips(Skeleton skeleton, SkeletonLine line)
    {
        var count = Math.Max(2, (int)Math.Ceiling(skeleton.LengthOf(line) / ClipSpacing - 1e-9));
        var way = skeleton.Joints[line.To] - skeleton.Joints[line.From];
        return Enumerable.Range(0, count).Select(i => skeleton.Joints[line.From] + ((i + 0.5) / count * way));
    }

    private static IReadOnlyList<FlashCradle> Cradles(FrameLayout layout) =>
        [.. layout.Cradles.Select(cradle => new FlashCradle(
            cradle.Fault is null ? JointLabel.For(layout.CradleTees[cradle.At]) : null, cradle.At, cradle.Window, cradle.Fault))];

    private static IEnumerable<FrameCaveat> Caveats(FrameLayout layout, FrameMeasures measures)
    {
        if (Math.Abs(PanelUp(layout, measures) - measures.Height) > 1e-5)
        {
            yield return new FrameCaveat(FrameCaveatKind.WithoutLegs) { Size = Length.FromMeters(PanelUp(layout, measures)), Against = measures.Design.Height };
        }

        if (!layout.Flat && measures.Travel > measures.Design.FootTravel.Meters)
        {
            yield return new FrameCaveat(FrameCaveatKind.SlopeBeyondFeet) { Size = Length.FromMeters(measures.Travel), Against = measures.Design.FootTravel };
        }

        if (layout.Flat && measures.Travel > 0)
        {
            yield return new FrameCaveat(FrameCaveatKind.FollowsSlope);
        }

        foreach (var cradle in measures.Design.Shape == FrameShape.LowGround ? measures.Design.Cradles.DistinctBy(cradle => cradle.BelowPanel) : [])
        {
            yield return new FrameCaveat(FrameCaveatKind.FlashOnGround) { Size = Length.FromMeters(PanelUp(layout, measures)) - cradle.BelowPanel };
        }

        yield return new FrameCaveat(FrameCaveatKind.TakeOffs);
    }
}
