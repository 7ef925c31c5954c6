using StudioKit.Kits;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Whether the body of a flash that lies on the ground has its room inside the skirts, and under its window.</summary>
internal static class LyingFlashes
{
    private const int FarthestMillimeters = 300;

    // Under a hundredth of a millimetre is rounding.
    private static readonly Length Same = Length.FromMillimeters(0.01);

    // Without skirts a body on the ground may stick out under the rails.
    private static readonly FlashBodyRoom Open = new(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>The flash, with its fault and the least moves that mend it where there is one.</summary>
    public static FlashBelow Checked(FlashBelow flash, FlashCradleCase body, FrameResult frame, KitSpec kit)
    {
        var room = kit.Panel.Skirts ? RoomOf(frame, kit.Frame.Pipe.OutsideDiameter.Meters / 2) : Open;
        if (FaultOf(body, frame.PanelHeight, room) is not { } fault)
        {
            return flash;
        }

        var moves = Enum.GetValues<CradleMoveKind>().Select(kind => Least(kind, body, frame.PanelHeight, room)).OfType<CradleMove>().OrderBy(move => move.By);
        return flash with { Fault = fault, Moves = [.. moves] };
    }

    private static CradleFault? FaultOf(FlashCradleCase body, Length panelHeight, FlashBodyRoom room)
    {
        var (outside, sunk) = (room.Outside(body), body.BodyHeight - (panelHeight - body.BelowPanel));
        return outside > Same ? new CradleFault(CradleFaultKind.BodyOutsideLegs, outside)
            : sunk > Same ? new CradleFault(CradleFaultKind.BodyInGround, sunk) : null;
    }

    private static CradleMove? Least(CradleMoveKind kind, FlashCradleCase body, Length panelHeight, FlashBodyRoom room) => Enumerable.Range(1, FarthestMillimeters)
        .Select(millimeters => new CradleMove(kind, Length.FromMillimeters(millimeters)))
        .FirstOrDefault(move => After(move, body, panelHeight) is var (moved, height) && moved.BelowPanel > Length.Zero && FaultOf(moved, height, room) is null);

    private static (FlashCradleCase Body, Length PanelHeight) After(CradleMove move, FlashCradleCase body, Length panelHeight) => move.Kind switch
    {
        CradleMoveKind.Up => (body with { BelowPanel = body.BelowPanel - move.By }, panelHeight),
        CradleMoveKind.Down => (body with { BelowPanel = body.BelowPanel + move.By }, panelHeight),
        CradleMoveKind.Left => (body with { OffsetRight = body.OffsetRight - move.By }, panelHeight),
        CradleMoveKind.Right => (body with { OffsetRight = body.OffsetRight + move.By }, panelHeight),
        CradleMoveKind.Front => (body with { OffsetBack = body.OffsetBack - move.By }, panelHeight),
        CradleMoveKind.Back => (body with { OffsetBack = body.OffsetBack + move.By }, panelHeight),
        _ => (body, panelHeight + move.By),
    };

    private static FlashBodyRoom RoomOf(FrameResult frame, double pipeRadius)
    {
        var places = frame.Joints.Select(joint => joint.Position).ToList();
        return new FlashBodyRoom(
            places.Min(place => place.Right) + pipeRadius, places.Max(place => place.Right) - pipeRadius,
            places.Min(place => place.Back) + pipeRadius, places.Max(place => place.Back) - pipeRadius);
    }
}
