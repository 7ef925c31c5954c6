using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Features;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The starting-exposure cards of a plan as a ring in order of magnification, several on a page.</summary>
internal static class ExposureCards
{
    public static Chapter Lay(Plan plan, CardTemplate template, Paper paper, Stamp stamp, bool evenIfFailing = false)
    {
        ExposurePlan[] ring = [.. plan.Ring, .. evenIfFailing ? plan.OffRing : []];
        var setUps = plan.Exposures.Select(exposure => exposure.SetUp).Distinct().ToList();
        var made = ring.Select((exposure, i) => ExposureCard.Make(
            exposure, plan.Advice.Of(exposure), template, stamp, new CardPlace(i + 1, ring.Length), new CardTab(exposure.SetUp, setUps.IndexOf(exposure.SetUp), setUps.Count), FeaturesOf(plan, exposure), plan.Covers.FirstOrDefault(cover => cover.SetUp == exposure.SetUp),
            StandsOf(plan, exposure), plan.UprightLights.FirstOrDefault(light => light.SetUp == exposure.SetUp))).ToList();
        Card[] cards = [.. template.Index ? IndexCards.Of(plan, ring, template, stamp) : [], .. made.SelectMany(card => card.More.Prepend(card.Card))];
        var laid = CardImposition.Lay($"Exposure cards, {template.Name}", cards, template, paper, stamp);
        return laid with { Problems = [.. laid.Problems, .. made.SelectMany(card => card.Problems).Distinct()] };
    }

    private static IReadOnlyList<FeaturePlan> FeaturesOf(Plan plan, ExposurePlan exposure) =>
        [.. plan.Features.Where(feature => feature.SetUp == exposure.SetUp && feature.Framing == exposure.Framing.Name)];

    private static IReadOnlyList<LightStandPlan> StandsOf(Plan plan, ExposurePlan exposure) =>
        [.. plan.LightStands.Where(stand => stand.SetUp == exposure.SetUp && stand.Framing == exposure.Framing.Name)];
}
