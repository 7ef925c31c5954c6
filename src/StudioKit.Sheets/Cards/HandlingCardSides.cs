using StudioKit.Kits.Cards;
using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Handling;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The handling card of one group of living things, front and back.</summary>
internal static class HandlingCardSides
{
    // The largest size at which both sides hold everything; 6.5 pt is the least that can be read.
    private static readonly double[] Sizes = [10, 9.5, 9, 8.5, 8, 7.5, 7, TypeScale.Smallest];

    public static (Card Card, IReadOnlyList<string> Problems) Make(HandlingCard card, CardTemplate template, Stamp stamp)
    {
        var (front, back) = (new CardSide(template, stamp, IsBack: false, HasRule: false), new CardSide(template, stamp, IsBack: true, HasRule: false));
        foreach (var size in Sizes)
        {
            var blocks = Blocks(card, size);
            var first = Enumerable.Range(0, blocks.Count + 1).Last(count => Holds(front, [.. blocks.Take(count)]));
            if (Holds(back, [.. blocks.Skip(first)]))
            {
                return (new Card(Side(card, front, [.. blocks.Take(first)]), first == blocks.Count ? null : Side(card, back, [.. blocks.Skip(first)])), []);
            }
        }

        var problem = $"The handling card for {card.Name} does not hold its guide at {template.Name}. Take a larger card, or shorten the guide.";
        return (new Card(Side(card, front, [new Caution(problem, card.Name, TypeScale.Small)])), [problem]);
    }

    private static bool Holds(CardSide side, IReadOnlyList<Block> blocks) => blocks.Count == 0 || side.Stack(blocks).Bottom <= side.Room.Bottom;

    private static Drawing Side(HandlingCard card, CardSide side, IReadOnlyList<Block> blocks) =>
        side.Finish($"Handling, {card.Name}", $"How {card.Name} are handled", side.Stack(blocks).Marks);

    private static IReadOnlyList<Block> Blocks(HandlingCard card, double size)
    {
        var sources = card.Lines.Where(line => line.Published).Select(line => line.Source).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            new Paragraph($"Handling: {card.Name}", 1.5 * size, TextWeight.Bold),
            .. card.Examples.Length > 0 ? (Block[])[new Paragraph(card.Examples, size)] : [],
            .. card.Subjects.Select(subject => new Paragraph(
                subject.HoldLimit is { } limit ? $"{subject.Name}: at most {PlanFormat.Minutes(limit)}" : $"{subject.Name}: not held", 1.2 * size, TextWeight.Bold)),
            new DividingLine(Stroke.Thin),
            .. card.Lines.GroupBy(line => line.Topic).SelectMany(topic => Topic(topic.Key, [.. topic], sources, size)),
            new DividingLine(Stroke.Thin),
            new Paragraph("Lines without a number are common practice, no published source.", Math.Max(TypeScale.Smallest, 0.8 * size)),
            .. sources.Select((source, i) => new Paragraph(FormattableString.Invariant($"[{i + 1}] {source}."), Math.Max(TypeScale.Smallest, 0.8 * size))),
        ];
    }

    private static IEnumerable<Block> Topic(HandlingTopic topic, IReadOnlyList<HandlingAdvice> lines, List<string> sources, double size)
    {
        var items = new ItemList([.. lines.Select(line => line.Published ? FormattableString.Invariant($"{line.Text} [{sources.IndexOf(line.Source) + 1}]") : line.Text)], ItemMarker.Dot, size);
        yield return new KeepTogether(new Stack([new Paragraph(Title(topic), size, TextWeight.Bold), items], 0.6));
    }

    private static string Title(HandlingTopic topic) => topic switch
    {
        HandlingTopic.LocalRules => "Local rules first",
        HandlingTopic.Permits => "Permits",
        HandlingTopic.Danger => "Danger",
        HandlingTopic.HoldTime => "How long",
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
