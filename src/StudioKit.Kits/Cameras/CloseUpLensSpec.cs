using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>A lens screwed on before the main lens.</summary>
public sealed record CloseUpLensSpec
{
    /// <summary>Name on the sheets; unique among the close-up lenses.</summary>
    public required string Name { get; init; }

    /// <summary>Optical power, e.g. <c>+3 dpt</c>.</summary>
    public required ReciprocalLength Power { get; init; }

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
