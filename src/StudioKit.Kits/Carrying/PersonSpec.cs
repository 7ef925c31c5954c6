using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>A person who carries.</summary>
public sealed record PersonSpec
{
    /// <summary>Name or role on the pack list.</summary>
    public required string Name { get; init; }

    /// <summary>Body mass.</summary>
    public required Mass BodyMass { get; init; }
}
