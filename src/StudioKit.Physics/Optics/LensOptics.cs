using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>What the optics must know of a lens.</summary>
public sealed record LensOptics
{
    /// <summary>Focal length f at infinity focus; &gt; 0 m.</summary>
    public required Length FocalLength { get; init; }

    /// <summary>Greatest magnification by its own focusing [1]; ≥ 0, and 0 for a lens that stays at infinity focus.</summary>
    public double LargestMagnification { get; init; }

    /// <summary>Whether groups move inside it, so that its focal length shortens and its length stays.</summary>
    public bool FocusesInternally { get; init; }

    /// <summary>
    /// Subject to sensor at closest focus; &gt; 0 m. With the greatest magnification it tells where the principal planes of a lens lie that moves as a
    /// whole, and how far an internal-focusing lens shortens.
    /// </summary>
    public Length? ClosestFocus { get; init; }

    /// <summary>Separation i of the principal planes at infinity focus, rear behind front; may be negative, none where it is unknown.</summary>
    public Length? Hiatus { get; init; }

    /// <summary>Exit over entrance pupil diameter p, the right way round [1]; &gt; 0, none where it is unknown.</summary>
    public double? PupilRatio { get; init; }

    /// <summary>Front glass to mount at infinity focus; &gt; 0 m, none where it is unknown.</summary>
    public Length? BarrelLength { get; init; }

    /// <summary>Whether it is mounted back to front; its own focusing then does nothing.</summary>
    public bool Reversed { get; init; }

    /// <summary>Widest marked aperture.</summary>
    public FNumber WidestAperture { get; init; } = new(2.8);

    /// <summary>Smallest marked aperture.</summary>
    public FNumber SmallestAperture { get; init; } = new(22);
}
