using UnitsNet;

namespace StudioKit.Planning;

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
}
