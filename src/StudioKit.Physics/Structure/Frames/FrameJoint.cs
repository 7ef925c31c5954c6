namespace StudioKit.Physics.Structure.Frames;

/// <summary>A fitting in its place.</summary>
/// <param name="Label">Label on drawings, J1, J2, …</param>
/// <param name="Kind">Which fitting.</param>
/// <param name="Position">Where its centre lines meet; for a cap, its floor.</param>
/// <param name="Ports">Its sockets.</param>
/// <param name="Pinned">Whether a pin should hold it, because carrying or lifting the frame pulls at it.</param>
public sealed record FrameJoint(
    string Label, FittingKind Kind, FramePoint Position, IReadOnlyList<FramePort> Ports, bool Pinned);
