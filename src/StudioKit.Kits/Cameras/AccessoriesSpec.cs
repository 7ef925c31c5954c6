using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>What goes between camera and lens, and before the lens.</summary>
public sealed record AccessoriesSpec
{
    /// <summary>Extension tubes, one entry a tube; they combine freely.</summary>
    public ValueList<ExtensionTubeSpec> ExtensionTubes { get; init; } = [];

    /// <summary>Close-up lenses.</summary>
    public ValueList<CloseUpLensSpec> CloseUpLenses { get; init; } = [];

    /// <summary>Teleconverters.</summary>
    public ValueList<TeleconverterSpec> Teleconverters { get; init; } = [];

    /// <summary>Travel of the focusing rail for one turn of its screw; none where there is no rail.</summary>
    public Length? RailPitch { get; init; }

    /// <summary>Polarising, neutral-density and other filters.</summary>
    public ValueList<FilterSpec> Filters { get; init; } = [];
}
