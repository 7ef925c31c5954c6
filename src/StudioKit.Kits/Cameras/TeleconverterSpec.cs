using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>A converter between camera and lens.</summary>
public sealed record TeleconverterSpec
{
    /// <summary>Name on the sheets; unique among the converters.</summary>
    public required string Name { get; init; }

    /// <summary>Factor by which it lengthens the focal length [1]; above 1.</summary>
    public required double Factor { get; init; }

    /// <summary>How much longer it makes the outfit.</summary>
    public Length Length { get; init; } = Length.FromMillimeters(20);

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
