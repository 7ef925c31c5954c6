using StudioKit.Kits.Shelters;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Something put up against sun or wind in an exposure.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Held">Whether somebody holds it.</param>
/// <param name="Distance">From the subject to it: up for a shade, windward for a wind-break.</param>
/// <param name="Sunward">How far its middle is moved towards the sun from over the subject; none where no sun is looked at, or none shines.</param>
public sealed record ShelterPlan(string Name, ShelterKind Kind, bool Held, Length Distance, Length? Sunward);
