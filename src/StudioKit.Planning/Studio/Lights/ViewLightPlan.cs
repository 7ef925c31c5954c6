using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>What one framing sees of the lit panel at one camera angle.</summary>
public sealed record ViewLightPlan
{
    /// <summary>Angle of the line of sight under the horizontal.</summary>
    public required Angle Pitch { get; init; }

    /// <summary>Camera turned about its line of sight; a quarter turn is an upright frame.</summary>
    public required Angle Roll { get; init; }

    /// <summary>Outline of what is seen of the panel.</summary>
    public required IReadOnlyList<PanelPlace> Patch { get; init; }

    /// <summary>Share of the frame that the panel fills [1]; 0 to 1.</summary>
    public required double PanelFraction { get; init; }

    /// <summary>Darkest visible point at the planned power; none where the frame misses the panel.</summary>
    public MarginPoint? Darkest { get; init; }

    /// <summary>Brightest visible point at the planned power.</summary>
    public MarginPoint? Brightest { get; init; }

    /// <summary>Share of the frame that clips to white at the planned power [1]; 0 to 1.</summary>
    public required double ClippedFraction { get; init; }

    /// <summary>What the camera looks along, in the side view.</summary>
    public required SightLine Sight { get; init; }
}
