using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>How the sheet's underside rises behind the flat part.</summary>
/// <param name="Radius">Radius of the arc.</param>
/// <param name="Angle">Angle that the sheet turns through; a quarter turn stands upright.</param>
/// <param name="TopRail">Ground to the rail that holds the sheet's upper edge.</param>
/// <param name="Profile">The arc in side view, from the end of the flat part to the sheet's upper edge, at equal angles.</param>
public sealed record SheetSweep(Length Radius, Angle Angle, Length TopRail, IReadOnlyList<FramePoint> Profile);
