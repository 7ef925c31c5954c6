using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>From an animal's length to the number of its card: the closest framing of each set-up that still shows it whole.</summary>
internal static class RingIndex
{
    public static Table Of(Plan plan, double sizePt)
    {
        var setUps = plan.AnimalLadder.SelectMany(rung => rung.Cards).Select(card => card.SetUp).Distinct().ToList();
        return new Table(
            [new Column($"Animal, {FigureFormat.FigureUnit}"), .. setUps.Select(setUp => new Column(setUp))],
            [.. plan.AnimalLadder.Select(rung => new TableRow(
                [AnimalText.Range(rung.Over, rung.UpTo), .. setUps.Select(setUp => string.Join(", ", rung.Cards.Where(card => card.SetUp == setUp).Select(card => Number(plan, card))))]))],
            sizePt);
    }

    private static string Number(Plan plan, RungCard card) => plan.CardNumber(card.SetUp, card.Framing)?.ToString(CultureInfo.InvariantCulture) ?? "";
}
