using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>A person who carries.</summary>
/// <param name="Name">Name; unique.</param>
/// <param name="BodyMass">Body mass; &gt; 0.</param>
public sealed record Carrier(string Name, Mass BodyMass);
