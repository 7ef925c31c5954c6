using StudioKit.Kits.SetUps;
using UnitsNet;

namespace StudioKit.Field;

/// <summary>What in a plan a reading or a picture belongs to.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Light">The flash as it stands there.</param>
/// <param name="Framing">Name of the framing; empty where it does not matter.</param>
/// <param name="Pitch">Camera pitch.</param>
public sealed record PlanPlace(SetUpSpec SetUp, LightSpec Light, string Framing, Angle Pitch);
