using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Features;

/// <summary>How fine, how deep, how large and how open: the bounds within which a feature is resolved.</summary>
internal static class FeatureSearch
{
    // Nobody takes more frames of a living thing (common practice, no source).
    private const double MostFrames = 2000;

    // The finest is looked for so many doublings either way of the feature itself.
    private const int Doublings = 10;

    /// <summary>Whether it is resolved in focus.</summary>
    public static bool IsResolved(FeatureCase seen) => FeatureResolution.ContrastInFocus(seen) >= FeatureResolution.RayleighContrast;

    /// <summary>Frames that resolve it over its relief; none where it would take thousands, or none does.</summary>
    public static int? FramesOver(Length relief, Length? depth) => depth is not { } one || relief / one > MostFrames
        ? null
        : FocusStack.Plan(new FocusStackCase { Depth = relief, DepthOfField = one }).Frames;

    /// <summary>Finest that is resolved in focus in its place.</summary>
    public static Length Finest(FeatureCase seen)
    {
        var (low, high) = (-(double)Doublings, (double)Doublings);
        while (high - low > 1e-4)
        {
            var middle = (low + high) / 2;
            (low, high) = IsResolved(At(middle)) ? (low, middle) : (middle, high);
        }

        return At(high).Spacing;

        FeatureCase At(double doublings) => seen with { Spacing = seen.Spacing * Math.Pow(2, doublings) };
    }

    /// <summary>Widest marked aperture that resolves it over its relief in one frame.</summary>
    public static FNumber? Widest(PlannedFraming framing, FeatureCase seen, Length relief) => SharpnessCurves.Marks(framing.Lens)
        .Cast<FNumber?>()
        .FirstOrDefault(mark => FeatureResolution.IsResolvedOver(seen with { EffectiveFNumber = SharpnessPlanner.At(framing, mark!.Value).EffectiveFNumber.Value }, relief));
}
