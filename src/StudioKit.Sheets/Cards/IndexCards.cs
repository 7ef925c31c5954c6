using System.Globalization;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>The first cards of a ring, which say what is on the others.</summary>
internal static class IndexCards
{
    private const double HeadPt = 12;
    private const double Gap = 1.5;

    public static IReadOnlyList<Card> Of(IReadOnlyList<ExposurePlan> ring, IReadOnlyList<AnimalRung> ladder, CardTemplate template, Stamp stamp)
    {
        var sides = new List<Drawing>();
        Fill(sides, "Which card for which animal?", ladder.Count == 0 ? null : Ladder(ring, ladder, template), template, stamp);
        Fill(sides, "Cards by magnification", Table(ring, template), template, stamp);
        return [.. sides.Chunk(2).Select(pair => new Card(pair[0], pair.Length == 2 ? pair[1] : null))];
    }

    private static void Fill(List<Drawing> sides, string title, Block? table, CardTemplate template, Stamp stamp)
    {
        for (var rest = table; rest is not null;)
        {
            var side = new CardSide(template, stamp, IsBack: sides.Count % 2 == 1, HasRule: false);
            var (bottom, head) = side.Stack([new CardHead(title, "index", HeadPt)]);
            var top = Math.Max(bottom, side.BelowHole) + Gap;
            var fit = Fill(rest, side.Room.Width, side.Room.Bottom - top);
            sides.Add(side.Finish("Index", "Which card is which", [.. head, .. fit.Marks.Select(mark => mark.Under(Similarity.Shift(side.Room.Left, top)))]));
            rest = fit.Problem is null ? fit.Rest : null;
        }
    }

    // From the animal to the number of its card: the closest framing of each set-up that still shows it whole.
    private static Table Ladder(IReadOnlyList<ExposurePlan> ring, IReadOnlyList<AnimalRung> ladder, CardTemplate template)
    {
        var setUps = ladder.SelectMany(rung => rung.Cards).Select(card => card.SetUp).Distinct().ToList();
        return new Table(
            [new Column($"Animal, {(PlanFormat.InInches ? "in" : "mm")}"), .. setUps.Select(setUp => new Column(setUp))],
            [.. ladder.Select(rung => new TableRow(
                [AnimalText.Range(rung.Over, rung.UpTo), .. setUps.Select(setUp => string.Join(", ", rung.Cards.Where(card => card.SetUp == setUp).Select(card => Number(ring, card))))]))],
            Math.Max(TypeScale.Smallest, template.Type.Text.DtpPoints));
    }

    private static string Number(IReadOnlyList<ExposurePlan> ring, RungCard card) =>
        (ring.TakeWhile(exposure => exposure.SetUp != card.SetUp || exposure.Framing.Name != card.Framing).Count() + 1).ToString(CultureInfo.InvariantCulture);

    private static Table Table(IReadOnlyList<ExposurePlan> ring, CardTemplate template) => new(
        [new Column("No.", ColumnKind.Right), new Column("Framing"), new Column("Set-up"), new Column("Start")],
        [.. ring.Select((exposure, i) => new TableRow(
            [(i + 1).ToString(CultureInfo.InvariantCulture), exposure.Framing.Name, exposure.SetUp, Start(exposure)]))],
        Math.Max(TypeScale.Smallest, template.Type.Small.DtpPoints));

    private static string Start(ExposurePlan exposure) => exposure.IsUsable
        ? $"{exposure.Aperture.Nominal} {exposure.Shutter.Nominal} {exposure.Iso.Nominal}"
        : "does not work";

    private static Fit Fill(Block table, double width, double height)
    {
        var fit = table.Fit(width, height);
        return fit.Problem is null ? fit : table.Force(width, height);
    }
}
