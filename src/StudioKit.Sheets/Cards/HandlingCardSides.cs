using StudioKit.Kits.Cards;
using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Handling;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>The handling card of one group of living things, front and back, and a second where one would be too small to read.</summary>
internal static class HandlingCardSides
{
    // One card at a size that is read at arm's length, else as few more as there must be; a guide of the user's own may be of any length.
    private static readonly (int Cards, double[] Sizes)[] Ways =
    [
        (1, [10, 9.5, 9, 8.5, 8]),
        (2, [10, 9.5, 9, 8.5, 8, 7.5, 7, TypeScale.Smallest]),
        (4, [8, 7, TypeScale.Smallest]),
        (12, [8, TypeScale.Smallest]),
    ];

    public static (IReadOnlyList<Card> Cards, IReadOnlyList<string> Problems) Make(HandlingCard card, IReadOnlyList<PlanCaution> cautions, CardTemplate template, Stamp stamp, CardPlace place)
    {
        var (front, back) = (new CardSide(template, stamp, IsBack: false, HasRule: false), new CardSide(template, stamp, IsBack: true, HasRule: false));
        foreach (var (cards, size) in Ways.SelectMany(way => way.Sizes.Select(size => (way.Cards, size))))
        {
            if (Filled(card, [.. Enumerable.Repeat(new[] { front, back }, cards).SelectMany(sides => sides)], Blocks(card, cautions, size), size, place) is { } sides)
            {
                return ([.. sides.Chunk(2).Select(two => new Card(two[0], two.ElementAtOrDefault(1)))], []);
            }
        }

        var problem = $"The handling card for {card.Name} does not hold its guide at {template.Name}. Take a larger card, or shorten the guide.";
        return ([new Card(Side(card, front, [new Caution(problem, card.Name, TypeScale.Small)]))], [problem]);
    }

    // As many sides as are needed, each as full as it gets; none where something is left over.
    private static List<Drawing>? Filled(HandlingCard card, IReadOnlyList<CardSide> sides, IReadOnlyList<Block> blocks, double size, CardPlace place)
    {
        var filled = new List<Drawing>();
        var placed = 0;
        for (var i = 0; i < sides.Count && placed < blocks.Count; i++)
        {
            Block[] head = [Head(card, i, size, place), new DividingLine(Stroke.Thin)];
            var count = Enumerable.Range(0, blocks.Count - placed + 1).TakeWhile(count => count == 0 || Holds(sides[i], [.. head, .. blocks.Skip(placed).Take(count)])).Last();
            filled.Add(Side(card, sides[i], [.. head, .. blocks.Skip(placed).Take(count)]));
            placed += count;
        }

        return placed == blocks.Count ? filled : null;
    }

    // Every side says whose it is, as sides come apart in the hand.
    private static CardHead Head(HandlingCard card, int side, double size, CardPlace place) =>
        new($"Handling: {card.Name}", (place with { IsContinued = side > 1 }).Says, side % 2 == 0 ? 1.5 * size : TypeScale.Small);

    private static bool Holds(CardSide side, IReadOnlyList<Block> blocks) => blocks.Count == 0 || side.Holds(side.Stack(blocks).Bottom);

    private static Drawing Side(HandlingCard card, CardSide side, IReadOnlyList<Block> blocks) =>
        side.Finish($"Handling, {card.Name}", $"How {card.Name} are handled", side.Stack(blocks).Marks);

    private static IReadOnlyList<Block> Blocks(HandlingCard card, IReadOnlyList<PlanCaution> cautions, double size)
    {
        var sources = card.Lines.Where(line => line.Published).Select(line => line.Source).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            .. card.Examples.Length > 0 ? (Block[])[new Paragraph(card.Examples, size)] : [],
            .. card.Subjects.Select(subject => new Paragraph(
                subject.HoldLimit is { } limit ? $"{subject.Name}: at most {MeasureFormat.Minutes(limit)}" : $"{subject.Name}: not held", 1.2 * size, TextWeight.Bold)),
            new DividingLine(Stroke.Thin),
            .. cautions.Where(BeforeAll).Select(caution => Caution(caution, size)),
            .. card.Lines.GroupBy(line => line.Topic).SelectMany(topic => Topic(topic.Key, [.. topic], sources, size)),
            .. cautions.Where(caution => !BeforeAll(caution)).Select(caution => Caution(caution, size)),
            new DividingLine(Stroke.Thin),
            new Paragraph("Lines without a number are common practice, no published source.", Math.Max(TypeScale.Smallest, 0.8 * size)),
            .. sources.Select((source, i) => new Paragraph(FormattableString.Invariant($"[{i + 1}] {source}."), Math.Max(TypeScale.Smallest, 0.8 * size))),
        ];
    }

    private static bool BeforeAll(PlanCaution caution) => caution.Kind == CautionKind.ProtectedHere;

    // A frame with a sign would take a third of the card.
    private static KeepTogether Caution(PlanCaution caution, double size) =>
        new(new Stack([Title($"! {CautionText.Title(caution)}", size), new Paragraph(CautionText.Of(caution), size)], 0.6));

    private static IEnumerable<Block> Topic(HandlingTopic topic, IReadOnlyList<HandlingAdvice> lines, List<string> sources, double size)
    {
        var items = new ItemList([.. lines.Select(line => line.Published ? FormattableString.Invariant($"{DisinfectantText.Of(line)} [{sources.IndexOf(line.Source) + 1}]") : DisinfectantText.Of(line))], ItemMarker.Dot, size);
        yield return new KeepTogether(new Stack([Title(Title(topic), size), items], 0.6));
    }

    private static Heading Title(string text, double size) => new(text, 2) { OwnSizePt = size };

    private static string Title(HandlingTopic topic) => topic switch
    {
        HandlingTopic.LocalRules => "Local rules first",
        HandlingTopic.Permits => "Permits",
        HandlingTopic.Danger => "Danger",
        HandlingTopic.HoldTime => "How long",
        HandlingTopic.StopSigns => "Stop when",
        HandlingTopic.Holding => "How to hold",
        HandlingTopic.ShadeAndMoisture => "Shade and moisture",
        HandlingTopic.Sheet => "The sheet",
        HandlingTopic.Light => "Flashes",
        HandlingTopic.Never => "Never",
        HandlingTopic.Ground => "Underfoot",
        HandlingTopic.Release => "Letting go",
        _ => "Clean",
    };
}
