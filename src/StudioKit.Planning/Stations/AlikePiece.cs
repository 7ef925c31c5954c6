using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Stations;

/// <summary>A piece of pipe or a sheet that is the same in several stations.</summary>
/// <param name="Material">Pipe or sheet that it is cut from.</param>
/// <param name="Length">Its cut length, or the longer side of a sheet.</param>
/// <param name="Width">The shorter side of a sheet; none of a pipe.</param>
/// <param name="Stations">Names of the kits that have it.</param>
/// <param name="Fewest">How many the station with fewest has [1].</param>
public sealed record AlikePiece(string Material, Length Length, Length? Width, ValueList<string> Stations, int Fewest);
