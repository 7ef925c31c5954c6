using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Accessories that may be combined to reach a magnification.</summary>
public sealed record AccessoriesOnHand
{
    /// <summary>Lengths of the extension tubes, one entry a tube; at most eight, each &gt; 0 m.</summary>
    public IReadOnlyList<Length> ExtensionTubes { get; init; } = [];

    /// <summary>Powers of the close-up lenses, one entry a lens; at most four, each &gt; 0 dioptres.</summary>
    public IReadOnlyList<ReciprocalLength> CloseUpLenses { get; init; } = [];

    /// <summary>Teleconverters, of which one is used at a time; at most four.</summary>
    public IReadOnlyList<TeleconverterOptics> Teleconverters { get; init; } = [];
}
