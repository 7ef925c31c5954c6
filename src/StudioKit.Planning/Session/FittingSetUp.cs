using StudioKit.Physics;
using StudioKit.Physics.Daylight;

namespace StudioKit.Planning.Session;

/// <summary>A set-up that can be photographed at a time.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Skies">Under which skies.</param>
public sealed record FittingSetUp(string SetUp, ValueList<SkyState> Skies);
