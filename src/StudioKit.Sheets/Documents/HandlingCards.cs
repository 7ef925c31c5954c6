using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Handling;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The handling cards of a plan, several on a page.</summary>
internal static class HandlingCards
{
    public static Chapter Lay(Plan plan, CardTemplate template, Paper paper, Stamp stamp)
    {
        var made = plan.Handling.Select((card, i) => HandlingCardSides.Make(card, Cautions(plan, card), template, stamp, new CardPlace(i + 1, plan.Handling.Count))).ToList();
        var laid = CardImposition.Lay($"Handling cards, {template.Name}", [.. made.SelectMany(card => card.Cards)], template, paper, stamp);
        return laid with { Problems = [.. laid.Problems, .. made.SelectMany(card => card.Problems)] };
    }

    private static IReadOnlyList<PlanCaution> Cautions(Plan plan, HandlingCard card) =>
        [.. plan.Cautions.Where(caution => caution.Sheets.Contains(CautionSheet.Handling) && caution.Groups.Contains(card.Group))];
}
