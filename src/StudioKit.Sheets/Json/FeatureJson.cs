using StudioKit.Kits;
using StudioKit.Planning.Features;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Whether a feature is resolved, as JSON.</summary>
internal static class FeatureJson
{
    /// <summary>Writes one feature in one exposure.</summary>
    public static void Write(JsonReport json, FeaturePlan feature) => json
        .Text("setUp", feature.SetUp)
        .Text("framing", feature.Framing)
        .Text("subject", feature.Subject)
        .Text("feature", feature.Feature)
        .Flag("shownWhole", feature.ShownWhole)
        .Micrometres("period", feature.Period)
        .Micrometres("size", feature.Size)
        .Millimetres("relief", feature.Relief)
        .Flag("resolved", feature.Resolved)
        .Count("frames", feature.Frames)
        .Text("limit", feature.Limit is { } limit ? MemberText.Of(limit) : null)
        .Number("contrast", feature.Contrast)
        .Number("criterion", FeaturePlan.Criterion)
        .Micrometres("finest", feature.Finest)
        .Millimetres("depthInOneFrame", feature.Depth)
        .Number("lowestMagnification", feature.LowestMagnification?.Value)
        .Text("widestAperture", feature.WidestAperture?.Nominal)
        .Text("text", FeatureText.Verdict(feature));
}
