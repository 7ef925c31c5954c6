using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Session;

/// <summary>When a set-up can be photographed: in which light, at which hours.</summary>
public sealed record SetUpWindow
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Ambient light that it is planned for.</summary>
    public required ExposureValue Planned { get; init; }

    /// <summary>Ambient light in which its exposures were found to work, looked for as far from what it is planned for as its cards' tables go.</summary>
    public required LightRange Works { get; init; }

    /// <summary>Ambient light that it is kept to: the kit's, or that in which it works.</summary>
    public required LightRange Light { get; init; }

    /// <summary>Whether the light that it is kept to stands in the kit.</summary>
    public bool IsGiven { get; init; }

    /// <summary>Hours that it is kept to; any where the kit gives none.</summary>
    public ClockRange? Clock { get; init; }
}
