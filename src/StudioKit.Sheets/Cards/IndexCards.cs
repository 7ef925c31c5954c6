using System.Globalization;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The first cards of a ring, which say what is on the others.</summary>
internal static class IndexCards
{
    private const double HeadPt = 12;
    private const double Gap = 1.5;

    public static IReadOnlyList<Card> Of(Plan plan, IReadOnlyList<ExposurePlan> ring, CardTemplate template, Stamp stamp)
    {
        var sides = new List<Drawing>();
        Fill(sides, "Which card for which animal?", plan.AnimalLadder.Count == 0 ? null : RingIndex.Of(plan, Math.Max(TypeScale.Smallest, template.Type.Text.DtpPoints)), template, stamp);
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
            sides.Add(side.Finish("Index", "Which card is which", [.. head, .. fit.Marks.Under(Similarity.Shift(side.Room.Left, top))]));
            rest = fit.Problem is null ? fit.Rest : null;
        }
    }

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
