using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Features;

/// <summary>Whether the feature that decides a subject's identity is resolved in one exposure, and what would resolve it.</summary>
/// <remarks>Depth, magnification and aperture are worked out when somebody asks: a plan is made often, and they are printed seldom.</remarks>
public sealed class FeaturePlan
{
    /// <summary>Lowest magnification that is tried [1].</summary>
    public const double LowestTried = 0.1;

    private readonly FeatureSeen _seen;
    private readonly Lazy<FeatureResult> _result;
    private readonly Lazy<Magnification?> _lowest;
    private readonly Lazy<FNumber?> _widest;

    internal FeaturePlan(FeatureSeen seen, LensReach reach)
    {
        _seen = seen;
        var here = seen.Case;
        Contrast = FeatureResolution.ContrastInFocus(here);
        Finest = FeatureSearch.Finest(here);
        _result = new(() => FeatureResolution.Of(here));
        _lowest = new(() => reach.Lowest(seen.Framing, other => FeatureSearch.IsResolved((seen with { Framing = other }).Case)));
        _widest = new(() => FeatureSearch.Widest(seen.Framing, here, Relief));
    }

    /// <summary>Contrast from which on a feature counts as resolved: what Rayleigh's criterion leaves [1].</summary>
    public static double Criterion => FeatureResolution.RayleighContrast;

    /// <summary>Name of the set-up.</summary>
    public string SetUp => _seen.Exposure.SetUp;

    /// <summary>Name of the framing.</summary>
    public string Framing => _seen.Exposure.Framing.Name;

    /// <summary>Name of the subject.</summary>
    public string Subject => _seen.Subject.Name;

    /// <summary>Whether the framing shows the subject whole.</summary>
    public bool ShownWhole => _seen.Exposure.Subjects.Contains(Subject);

    /// <summary>What the feature is.</summary>
    public string Feature => _seen.Feature.Name;

    /// <summary>Distance from one line of it to the next; of a single one twice its width.</summary>
    public Length Period => _seen.Feature.Period;

    /// <summary>Width of a single one, where the kit gives that; none where it repeats.</summary>
    public Length? Size => _seen.Feature.Size;

    /// <summary>How deep it lies along the line of sight.</summary>
    public Length Relief => _seen.Feature.Relief;

    /// <summary>Its contrast in the picture, in the focused plane [1].</summary>
    public double Contrast { get; }

    /// <summary>Finest that would be resolved in focus in its place, at the same contrast.</summary>
    public Length Finest { get; }

    /// <summary>Depth over which one frame resolves it; none where it is not resolved even in focus.</summary>
    public Length? Depth => _result.Value.Depth;

    /// <summary>Frames, focused one behind another, that resolve it over its relief [1]; none where no number does.</summary>
    public int? Frames => FeatureSearch.FramesOver(Relief, Depth);

    /// <summary>What limits it; none where one frame resolves it.</summary>
    public FeatureLimit? Limit => !_result.Value.ResolvedInFocus ? _result.Value.InFocusLimit : Frames == 1 ? null : FeatureLimit.Defocus;

    /// <summary>Lowest magnification of this lens that resolves it in focus at this aperture and as steady, rounded up to what can be set and from <see cref="LowestTried"/> up; none where none does.</summary>
    public Magnification? LowestMagnification => _lowest.Value;

    /// <summary>Widest marked aperture of this lens that resolves it over its relief in one frame, as steady; none where none does.</summary>
    public FNumber? WidestAperture => _widest.Value;

    /// <summary>Whether it is resolved, in one frame or several.</summary>
    public bool Resolved => Contrast >= Criterion && Frames is not null;
}
