using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>What moves while a picture is taken.</summary>
public sealed record MotionBlurCase
{
    /// <summary>Magnification on the sensor.</summary>
    public required Magnification Magnification { get; init; }

    /// <summary>Distance between pixel centres; &gt; 0 m.</summary>
    public required Length PixelPitch { get; init; }

    /// <summary>Speed of the subject across the line of sight; ≥ 0 m/s.</summary>
    public required Speed SubjectSpeed { get; init; }

    /// <summary>Speed of the hand-held camera across the line of sight, at the subject; ≥ 0 m/s, 0 on a tripod.</summary>
    public Speed HandSpeed { get; init; }

    /// <summary>How long the flash burns at its power setting, t0.1; ≥ 0 s.</summary>
    public Duration FlashDuration { get; init; }

    /// <summary>How long the shutter lets ambient light in.</summary>
    public required ShutterSpeed Shutter { get; init; }

    /// <summary>Share of ambient light in the exposure [1]; 0 to 1.</summary>
    public double AmbientShare { get; init; }
}
