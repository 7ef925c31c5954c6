using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>What the panel rests on and is held by.</summary>
/// <param name="Seat">Over or inside the rails.</param>
/// <param name="Bearing">Width of the strip that it rests on.</param>
/// <param name="Pad">Thickness of the pad between rail and panel, which clears the fittings' shoulders.</param>
/// <param name="EdgeClearance">Room left at every edge for growth.</param>
/// <param name="ClipPoints">Where clips hold it to the rails, on the rails' centre lines.</param>
public sealed record PanelLedge(
    PanelSeat Seat, Length Bearing, Length Pad, Length EdgeClearance, IReadOnlyList<FramePoint> ClipPoints);
