using StudioKit.Planning.Features;
using UnitsNet.Units;

namespace StudioKit.Planning.Checks;

/// <summary>Whether each feature that decides what a subject is can be seen in one exposure at least.</summary>
internal static class FeatureChecks
{
    /// <summary>A check for each subject that names a feature and is photographed.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan)
    {
        var usable = plan.Exposures.Where(exposure => exposure.IsUsable).Select(exposure => (exposure.SetUp, exposure.Framing.Name)).ToHashSet();
        return plan.Features.Where(feature => usable.Contains((feature.SetUp, feature.Framing))).GroupBy(feature => feature.Subject).Select(subject => Of(plan, [.. subject]));
    }

    private static PlanCheck Of(Plan plan, IReadOnlyList<FeaturePlan> features)
    {
        // The one that sees most is asked first: where it does, none of the others is looked into.
        var byFineness = features.OrderBy(feature => feature.Finest).ToList();
        var best = byFineness[0];
        var passed = byFineness.Exists(feature => feature.Resolved);
        return new PlanCheck
        {
            Kind = PlanCheckKind.Feature,
            Parts = [best.Subject, best.Feature],
            Passed = passed,
            Demand = new CheckAmount.Measure(best.Period.ToUnit(LengthUnit.Micrometer)),
            Capacity = new CheckAmount.Measure(best.Finest.ToUnit(LengthUnit.Micrometer)),
            Ratio = best.Finest / best.Period,
            SourceKey = "Rayleigh1879",
            SourceLocator = "resolving power, as the contrast that its criterion leaves",
            Findings = passed ? [] : [new CheckFinding.OfFeature(best)],
            Remedy = passed ? null : Larger(plan, features),
        };
    }

    private static CheckRemedy? Larger(Plan plan, IReadOnlyList<FeaturePlan> features) =>
        features.Where(feature => feature.LowestMagnification is not null).MinBy(feature => feature.LowestMagnification!.Value.Value) is { } least
            ? new CheckRemedy(CheckRemedyKind.ShowLarger)
            {
                Amount = new CheckAmount.Enlargement(least.LowestMagnification!.Value),
                Parts = [plan.Framings.First(framing => framing.Name == least.Framing).Lens, least.SetUp],
                Keys = ["lenses.magnifications", "set-ups.magnifications"],
            }
            : null;
}
