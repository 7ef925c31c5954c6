using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Two plans side by side as one JSON document.</summary>
public static class ComparisonJson
{
    /// <summary>Both plans in a few numbers, then every line that was compared.</summary>
    public static string Write(PlanComparison comparison) => JsonReport.Document(json => json
        .Section("first", () => WriteSummary(json, comparison.First))
        .Section("second", () => WriteSummary(json, comparison.Second))
        .Grams("massDifference", comparison.MassDifference)
        .List("lines", ComparisonText.Lines(comparison), line => json
            .Text("subject", line.Subject)
            .Text("first", line.First)
            .Text("second", line.Second)
            .Flag("differs", line.Differs)));

    private static void WriteSummary(JsonReport json, Plan plan) => json
        .Text("kit", plan.Kit.Name)
        .Text("contentHash", plan.ContentHash)
        .Flag("stands", plan.Stands)
        .Grams("mass", plan.Pack.Total)
        .Millimetres("panelWidth", plan.Panel.Width)
        .Millimetres("panelDepth", plan.Panel.Depth)
        .Count("framingsReached", plan.Framings.Count(framing => framing.Reached))
        .Count("exposuresThatWork", plan.Exposures.Count(exposure => exposure.IsUsable))
        .Stops("leastWhiteMargin", plan.LeastWhiteMargin)
        .Count("checksFailed", plan.Checks.Count(check => !check.Passed));
}
