using StudioKit.Physics.Optics;
using StudioKit.Planning;
using StudioKit.Planning.Features;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Whether a feature is resolved, in words.</summary>
internal static class FeatureText
{
    // Magnifications that are written alike differ by less.
    private const double Rounding = 0.005;

    /// <summary>Whose it is, what it is and how fine, e.g. "hawk-moth, scale rows, 90 µm from one to the next".</summary>
    public static string Name(FeaturePlan feature) => $"{feature.Subject}, {feature.Feature}, {Fineness(feature)}";

    /// <summary>A distance from one to the next as the kit gives its own: of a single one, its width.</summary>
    public static Length AsGiven(FeaturePlan feature, Length period) => feature.Size is null ? period : period / 2;

    /// <summary>Whether it is resolved, and by what it is limited where not.</summary>
    public static string Verdict(FeaturePlan feature) => feature switch
    {
        { Frames: 1 } => "yes",
        { Frames: { } frames } => FormattableString.Invariant($"in {frames} frames, focused one behind another"),
        _ => $"no: {Cause(feature.Limit!.Value)}",
    };

    /// <summary>What limits it.</summary>
    public static string Cause(FeatureLimit limit) => limit switch
    {
        FeatureLimit.Pixels => "pixels too large for it",
        FeatureLimit.Diffraction => "aperture too small (diffraction)",
        FeatureLimit.Smear => "smear",
        FeatureLimit.Faintness => "too faint itself",
        FeatureLimit.Defocus => "too deep for the aperture (defocus)",
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, "A limit without words."),
    };

    /// <summary>Lowest magnification that resolves it.</summary>
    public static string Lowest(FeaturePlan feature) => feature.LowestMagnification is not { } lowest ? "none of this lens"
        : lowest.Value <= FeaturePlan.LowestTried * (1 + Rounding) ? $"{lowest.Nominal} or less"
        : lowest.Nominal;

    /// <summary>What of all features one exposure shows, for a card, where room is short: how fine they are and why one is not seen stands in the report.</summary>
    public static string OfCard(IReadOnlyList<FeaturePlan> features) => string.Join(
        ' ',
        new[]
        {
            ("Seen:", features.Where(feature => feature.Resolved).Select(feature => $"{Short(feature)}{(feature.Frames > 1 ? FormattableString.Invariant($" in {feature.Frames} frames") : "")}")),
            ("Not seen:", features.Where(feature => !feature.Resolved).Select(Short)),
        }
        .Where(part => part.Item2.Any())
        .Select(part => $"{part.Item1} {string.Join("; ", part.Item2)}."));

    private static string Short(FeaturePlan feature) => $"{feature.Subject}, {feature.Feature}";

    private static string Fineness(FeaturePlan feature) =>
        feature.Size is { } size ? $"{PlanFormat.Micrometres(size)} wide" : $"{PlanFormat.Micrometres(feature.Period)} from one to the next";
}
