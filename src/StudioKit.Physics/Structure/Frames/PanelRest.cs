using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A strip of pad upon a rail, or of ledge along it, that an edge of the panel rests on.</summary>
/// <param name="Member">Label of the piece of pipe that carries it.</param>
/// <param name="Edge">Edge of the panel over it.</param>
/// <param name="From">Its first end, on the pipe's centre line.</param>
/// <param name="To">Its second end.</param>
public sealed record PanelRest(string Member, PanelEdge Edge, FramePoint From, FramePoint To)
{
    /// <summary>Length to cut: all of the pipe that shows between its fittings.</summary>
    public Length Length => Length.FromMeters((To - From).Norm);
}
