using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>A filter before the lens.</summary>
public sealed record FilterSpec
{
    /// <summary>Name on the sheets; unique among the filters.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required FilterKind Kind { get; init; }

    /// <summary>Light lost, as a positive number of stops.</summary>
    public Stops Loss { get; init; } = new(1.5);

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
