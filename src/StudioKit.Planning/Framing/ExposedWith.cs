using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>What of an exposure counts for its sharpness.</summary>
internal sealed record ExposedWith
{
    /// <summary>f-number set on the lens.</summary>
    public required FNumber Aperture { get; init; }

    /// <summary>Shutter speed set.</summary>
    public required ShutterSpeed Shutter { get; init; }

    /// <summary>Speed at which the camera sways against the subject.</summary>
    public required Speed Sway { get; init; }

    /// <summary>Longest flash at work, t0.1; none without a flash.</summary>
    public Duration? FlashDuration { get; init; }

    /// <summary>Longest recycle time; none without a flash.</summary>
    public Duration? RecycleTime { get; init; }

    /// <summary>Flashes that fire for a frame [1].</summary>
    public required int Flashes { get; init; }

    /// <summary>Share of ambient light on the subject [1]; 0 to 1.</summary>
    public required double AmbientShare { get; init; }
}
