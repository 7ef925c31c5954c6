using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>Where a flash is fixed under the panel.</summary>
public sealed record FlashBelowPlan
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Name of the modifier before it; none where it is bare.</summary>
    public string? Modifier { get; init; }

    /// <summary>Zoom of the head, as focal length on a 36 mm × 24 mm sensor; none where neither the kit nor the guide number names one.</summary>
    public Length? Zoom { get; init; }

    /// <summary>Bright window to the panel's underside.</summary>
    public required Length Distance { get; init; }

    /// <summary>Bright window over the ground.</summary>
    public required Length OverGround { get; init; }

    /// <summary>Middle of the window from the panel's left edge, as the camera sees it.</summary>
    public required Length FromLeft { get; init; }

    /// <summary>Middle of the window from the panel's right edge.</summary>
    public required Length FromRight { get; init; }

    /// <summary>Middle of the window from the panel's front edge, on level ground.</summary>
    public required Length FromFront { get; init; }

    /// <summary>Middle of the window from the back edge of the panel's flat part.</summary>
    public required Length FromBack { get; init; }

    /// <summary>Angle of its axis from straight up.</summary>
    public required Angle Tilt { get; init; }

    /// <summary>Width of the window, across the view.</summary>
    public required Length WindowWidth { get; init; }

    /// <summary>Height of the window, along the view.</summary>
    public required Length WindowHeight { get; init; }

    /// <summary>Distance from which the inverse-square law holds to about a hundredth: five times the window's longer side.</summary>
    public required Length InverseSquareFrom { get; init; }

    /// <summary>What the light straight above falls short of the inverse-square law because the window is near, for a matt window.</summary>
    public required Stops NearFieldShortfall { get; init; }

    /// <summary>The window in the side view, its front end first.</summary>
    public required IReadOnlyList<SidePoint> Window { get; init; }
}
