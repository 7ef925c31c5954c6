using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The starting-exposure cards of a plan, several on a page.</summary>
internal static class ExposureCards
{
    public static Chapter Lay(Plan plan, CardFormat format, Paper paper, Stamp stamp)
    {
        var made = plan.Exposures.Select(exposure => ExposureCard.Make(exposure, format, stamp)).ToList();
        var laid = CardImposition.Lay($"Exposure cards, {format.Name}", [.. made.Select(card => card.Card)], format, paper, stamp);
        return laid with { Problems = [.. laid.Problems, .. made.SelectMany(card => card.Problems)] };
    }
}
