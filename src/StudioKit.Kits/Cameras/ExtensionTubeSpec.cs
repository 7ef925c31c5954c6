using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>A hollow tube between camera and lens.</summary>
public sealed record ExtensionTubeSpec
{
    /// <summary>Name on the sheets; unique among the tubes.</summary>
    public required string Name { get; init; }

    /// <summary>Extension it adds.</summary>
    public required Length Length { get; init; }

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
