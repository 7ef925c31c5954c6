using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The handling cards of a plan, several on a page.</summary>
internal static class HandlingCards
{
    public static Chapter Lay(Plan plan, CardFormat format, Paper paper, Stamp stamp)
    {
        var made = plan.Handling.Select(card => HandlingCardSides.Make(card, format, stamp)).ToList();
        var laid = CardImposition.Lay($"Handling cards, {format.Name}", [.. made.Select(card => card.Card)], format, paper, stamp);
        return laid with { Problems = [.. laid.Problems, .. made.SelectMany(card => card.Problems)] };
    }
}
