using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Parts at one height.</summary>
/// <param name="Height">Level ground to their middle.</param>
/// <param name="Parts">Their labels.</param>
public sealed record RailHeight(Length Height, ValueList<string> Parts);
