using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>A subject too deep for one frame, to be taken in slices.</summary>
public sealed record FocusStackCase
{
    /// <summary>Depth of the subject along the line of sight; ≥ 0 m.</summary>
    public required Length Depth { get; init; }

    /// <summary>Depth of field of one frame; &gt; 0 m.</summary>
    public required Length DepthOfField { get; init; }

    /// <summary>Share of each slice that the next one repeats [1]; from 0, under 1.</summary>
    public double Overlap { get; init; } = 0.3;

    /// <summary>Whether the first and last frame are focused on the subject's end planes, rather than half a slice inside them.</summary>
    public bool FocusOnEndPlanes { get; init; }

    /// <summary>Travel of the focusing rail for one turn of its screw; &gt; 0 m, none where there is no rail.</summary>
    public Length? RailPitch { get; init; }

    /// <summary>Time from one frame to the next: turning, settling, recycling; ≥ 0 s.</summary>
    public Duration FrameInterval { get; init; } = Duration.FromSeconds(3);

    /// <summary>Flashes that fire for each frame [1]; ≥ 0.</summary>
    public int FlashesPerFrame { get; init; } = 1;
}
