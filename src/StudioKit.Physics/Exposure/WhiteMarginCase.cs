using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure;

/// <summary>A flash shining up through a translucent panel into a camera above.</summary>
public sealed record WhiteMarginCase
{
    /// <summary>The flash below; its distance is counted to the panel's underside.</summary>
    public required FlashCase Flash { get; init; }

    /// <summary>Camera and lens.</summary>
    public required CameraCase Camera { get; init; }

    /// <summary>Total transmittance of the panel T [1]; above 0, at most 1.</summary>
    public required double Transmittance { get; init; }

    /// <summary>
    /// Luminance of the darkest visible point against the point straight above a bare flash, from a light map: fall-off, hot spot
    /// and the light
    /// that skirts and floor add. 0 for that point itself.
    /// </summary>
    public Stops DarkestPoint { get; init; }

    /// <summary>How well the inputs are known.</summary>
    public LightUncertainty Uncertainty { get; init; } = LightUncertainty.Usual;
}
