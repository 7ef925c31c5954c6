using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A bag and what it comes to.</summary>
public sealed record BagLoad
{
    /// <summary>Name of the bag.</summary>
    public required string Name { get; init; }

    /// <summary>Mass with everything in and on it.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Greatest load the bag takes, its own mass included; none where it was not given.</summary>
    public Mass? HighestLoad { get; init; }

    /// <summary>Who carries it; none where it was not given.</summary>
    public string? Carrier { get; init; }

    /// <summary>Share of the carrier's body mass [1]; none where nobody is named.</summary>
    public double? ShareOfBodyMass { get; init; }

    /// <summary>Share of the usable volume that is filled, things without a size left out [1].</summary>
    public double VolumeShare { get; init; }

    /// <summary>Names of the things in it from the bottom up: last needed lowest; of those needed together heavy ones low, fragile ones on top.</summary>
    public IReadOnlyList<string> FromBottom { get; init; } = [];
}
