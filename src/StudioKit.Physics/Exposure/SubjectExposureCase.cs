using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure;

/// <summary>A flash lighting the subject.</summary>
public sealed record SubjectExposureCase
{
    /// <summary>The flash; its distance is counted to the subject.</summary>
    public required FlashCase Flash { get; init; }

    /// <summary>Camera and lens.</summary>
    public required CameraCase Camera { get; init; }

    /// <summary>
    /// Reflectance that is to be rendered as a mid-tone [1]; above 0, at most 1. At 0.18 every tone falls where an incident-light
    /// meter puts it, so a black beetle
    /// stays black and a white moth white; the subject's own reflectance lifts or lowers it to a mid-tone.
    /// </summary>
    public double Reflectance { get; init; } = 0.18;

    /// <summary>How well the inputs are known.</summary>
    public LightUncertainty Uncertainty { get; init; } = LightUncertainty.Usual;
}
