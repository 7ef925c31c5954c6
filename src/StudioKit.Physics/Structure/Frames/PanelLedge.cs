using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>What the panel rests on and is held by.</summary>
/// <param name="Seat">Over or inside the rails.</param>
/// <param name="Bearing">Width of the strip that it rests on.</param>
/// <param name="Pad">Thickness of the pad between rail and panel, which clears the fittings' shoulders.</param>
/// <param name="EdgeClearance">Room left at every edge for growth.</param>
/// <param name="ClipPoints">Where clips hold it to the rails, on the rails' centre lines.</param>
public sealed record PanelLedge(
    PanelSeat Seat, Length Bearing, Length Pad, Length EdgeClearance, IReadOnlyList<FramePoint> ClipPoints)
{
    /// <summary>Strips that it rests on, in the order of the rails.</summary>
    public IReadOnlyList<PanelRest> Rests { get; init; } = [];

    /// <summary>Whether the side edges of the flat part rest on strips too, so that it is held up all round.</summary>
    public bool AllRound => Enum.GetValues<PanelEdge>().Where(edge => edge != PanelEdge.Top).All(edge => Rests.Any(rest => rest.Edge == edge));

    /// <summary>Length of all strips.</summary>
    public Length RestLength => Length.FromMeters(Rests.Sum(rest => rest.Length.Meters));
}
