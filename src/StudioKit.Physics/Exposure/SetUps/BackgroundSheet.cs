using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A second translucent sheet in the picture, with a flash of its own behind it.</summary>
public sealed record BackgroundSheet
{
    /// <summary>The flash behind it; its distance is counted to the sheet.</summary>
    public required FlashCase Flash { get; init; }

    /// <summary>Total transmittance of the sheet [1]; above 0, at most 1.</summary>
    public required double Transmittance { get; init; }

    /// <summary>Darkest visible point against the point straight before a bare flash, from the light map.</summary>
    public Stops DarkestPoint { get; init; }

    /// <summary>Brightest visible point against the same.</summary>
    public Stops BrightestPoint { get; init; }
}
