using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Features;

/// <summary>Whether the feature that decides a subject's identity is resolved in one exposure, and what would resolve it.</summary>
public sealed record FeaturePlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the framing.</summary>
    public required string Framing { get; init; }

    /// <summary>Name of the subject.</summary>
    public required string Subject { get; init; }

    /// <summary>Whether the framing shows the subject whole.</summary>
    public required bool ShownWhole { get; init; }

    /// <summary>What the feature is.</summary>
    public required string Feature { get; init; }

    /// <summary>Distance from one line of it to the next; of a single one twice its width.</summary>
    public required Length Period { get; init; }

    /// <summary>Width of a single one, where the kit gives that; none where it repeats.</summary>
    public Length? Size { get; init; }

    /// <summary>How deep it lies along the line of sight.</summary>
    public required Length Relief { get; init; }

    /// <summary>Its contrast in the picture, in the focused plane [1].</summary>
    public required double Contrast { get; init; }

    /// <summary>Contrast from which on it counts as resolved: what Rayleigh's criterion leaves [1].</summary>
    public static double Criterion => FeatureResolution.RayleighContrast;

    /// <summary>Lowest magnification that is tried [1].</summary>
    public const double LowestTried = 0.1;

    /// <summary>Depth over which one frame resolves it; none where it is not resolved even in focus.</summary>
    public Length? Depth { get; init; }

    /// <summary>Frames, focused one behind another, that resolve it over its relief [1]; none where no number does.</summary>
    public int? Frames { get; init; }

    /// <summary>What limits it; none where one frame resolves it.</summary>
    public FeatureLimit? Limit { get; init; }

    /// <summary>Finest that would be resolved in focus in its place, at the same contrast.</summary>
    public required Length Finest { get; init; }

    /// <summary>Lowest magnification of this lens that resolves it in focus at this aperture and as steady, rounded up to what can be set and from <see cref="LowestTried"/> up; none where none does.</summary>
    public Magnification? LowestMagnification { get; init; }

    /// <summary>Widest marked aperture of this lens that resolves it over its relief in one frame, as steady; none where none does.</summary>
    public FNumber? WidestAperture { get; init; }

    /// <summary>Whether it is resolved, in one frame or several.</summary>
    public bool Resolved => Frames is not null;
}
