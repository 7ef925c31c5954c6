using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>What a flash must do and what may be tried; every combination of the lists is one candidate.</summary>
public sealed record PlacementCase
{
    /// <summary>The sheet; its height is replaced by each of <see cref="PanelHeights"/>.</summary>
    public required LightPanel Panel { get; init; }

    /// <summary>Framings to serve, all from one place of the flash; the power may differ from one to the next.</summary>
    public required IReadOnlyList<PlacementFraming> Framings { get; init; }

    /// <summary>Zoom settings and modifiers to try.</summary>
    public required IReadOnlyList<PlacementFlash> Flashes { get; init; }

    /// <summary>Heights of the sheet's underside over the ground to try.</summary>
    public required IReadOnlyList<Length> PanelHeights { get; init; }

    /// <summary>Surrounds to try, such as with and without skirts.</summary>
    public required IReadOnlyList<LightSurround> Surrounds { get; init; }

    /// <summary>Distances from window to sheet to try; those that end in the ground are passed over.</summary>
    public required IReadOnlyList<Length> Distances { get; init; }

    /// <summary>Offsets to the right to try; two flashes stand so far right and left of the middle.</summary>
    public IReadOnlyList<Length> OffsetsRight { get; init; } = [Length.Zero];

    /// <summary>Offsets to the back to try.</summary>
    public IReadOnlyList<Length> OffsetsBack { get; init; } = [Length.Zero];

    /// <summary>Numbers of flashes to try; 1 or 2.</summary>
    public IReadOnlyList<int> Counts { get; init; } = [1, 2];

    /// <summary>Whether the axis is aimed at the middle of what the framings see; straight up otherwise.</summary>
    public IReadOnlyList<bool> Aims { get; init; } = [false, true];

    /// <summary>Least margin of the darkest visible point.</summary>
    public Stops TargetMargin { get; init; } = new(1.0 / 3);
}
