using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Placements;
using UnitsNet;

namespace StudioKit.Planning.Studio.Placing;

/// <summary>One way to light the panel from below, and what it gives.</summary>
public sealed record PlacementChoice
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Name of the modifier before it; none where it is bare.</summary>
    public string? Modifier { get; init; }

    /// <summary>Zoom setting; the guide number's own where there is none.</summary>
    public Length? Zoom { get; init; }

    /// <summary>Number of flashes [1]; 1 or 2.</summary>
    public required int Count { get; init; }

    /// <summary>Whether skirts close the space under the panel.</summary>
    public required bool Skirts { get; init; }

    /// <summary>Ground to the panel's underside.</summary>
    public required Length PanelHeight { get; init; }

    /// <summary>Bright window to the panel's underside.</summary>
    public required Length Distance { get; init; }

    /// <summary>Right of the flat panel's centre; two flashes stand so far on both sides.</summary>
    public required Length OffsetRight { get; init; }

    /// <summary>Beyond the flat panel's centre.</summary>
    public required Length OffsetBack { get; init; }

    /// <summary>Point aimed at, right of the flat panel's centre; straight up where there is none.</summary>
    public Length? AimRight { get; init; }

    /// <summary>Point aimed at, beyond the flat panel's centre.</summary>
    public Length? AimBack { get; init; }

    /// <summary>Energy of all flashes at work in full-power flashes, averaged over the framings [1].</summary>
    public required double FullPowerFlashes { get; init; }

    /// <summary>Unevenness in the worst framing.</summary>
    public required Stops Spread { get; init; }

    /// <summary>What keeps it from serving every framing.</summary>
    public required PlacementLimit Limit { get; init; }

    /// <summary>What each framing gets at each camera angle; empty where the geometry is impossible.</summary>
    public required IReadOnlyList<FramingLight> Framings { get; init; }
}
