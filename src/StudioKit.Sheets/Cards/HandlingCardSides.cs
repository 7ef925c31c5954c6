using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The handling card of one group of living things, front and back.</summary>
internal static class HandlingCardSides
{
    private const double Margin = 5;
    private const double FootHeight = 3.4;
    private const double Gap = 1.4;

    // The largest size at which both sides hold everything; 6.5 pt is the least that can be read.
    private static readonly double[] Sizes = [10, 9.5, 9, 8.5, 8, 7.5, 7, TypeScale.Smallest];

    public static (Card Card, IReadOnlyList<string> Problems) Make(HandlingCard card, CardFormat format, Stamp stamp)
    {
        var room = new Bounds(Margin, Margin, format.WidthMm - Margin, format.HeightMm - Margin - FootHeight);
        foreach (var size in Sizes)
        {
            var front = new Stack(Blocks(card, size), Gap).Fit(room.Width, room.Height);
            var back = front.Rest?.Fit(room.Width, room.Height);
            if (front.Problem is null && back is null or { Problem: null, Rest: null })
            {
                return (new Card(Side(card, format, stamp, room, front), back is null ? null : Side(card, format, stamp, room, back)), []);
            }
        }

        var whole = new Stack(Blocks(card, TypeScale.Smallest), Gap).Fit(room.Width, double.PositiveInfinity);
        var problem = FormattableString.Invariant(
            $"The handling card for {card.Name} needs {whole.Height:0} mm of height; both sides of {format.Name} have {2 * room.Height:0} mm. Take a larger card.");
        return (new Card(Side(card, format, stamp, room, new Stack([new Caution(problem, card.Name, TypeScale.Small)]).Fit(room.Width, double.PositiveInfinity))), [problem]);
    }

    private static IReadOnlyList<Block> Blocks(HandlingCard card, double size)
    {
        var sources = card.Lines.Where(line => line.Published).Select(line => line.Source).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            new Paragraph($"Handling: {card.Name}", 1.5 * size, TextWeight.Bold),
            .. card.Examples.Length > 0 ? (Block[])[new Paragraph(card.Examples, size)] : [],
            .. card.Subjects.Select(subject => new Paragraph(
                subject.HoldLimit is { } limit ? $"{subject.Name}: at most {PlanFormat.Minutes(limit)}" : $"{subject.Name}: not held", 1.2 * size, TextWeight.Bold)),
            new Rule(Stroke.Thin),
            .. card.Lines.GroupBy(line => line.Topic).SelectMany(topic => Topic(topic.Key, [.. topic], sources, size)),
            new Rule(Stroke.Thin),
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

    private static Drawing Side(HandlingCard card, CardFormat format, Stamp stamp, Bounds room, Fit content)
    {
        var stamped = $", {stamp.Origin}";
        var nameRoom = room.Width - TextMeter.Width(stamped, TypeScale.Smallest, TextWeight.Regular);
        var foot = TextWrap.Shortened(stamp.KitName, nameRoom, TypeScale.Smallest, TextWeight.Regular) + stamped;
        return new Drawing(
            $"Handling, {card.Name}",
            $"How {card.Name} are handled",
            [
                .. content.Marks.Select(mark => mark.Under(Similarity.Shift(room.Left, room.Top))),
                new Label(new Point(room.Left, format.HeightMm - Margin), foot, TypeScale.Smallest),
            ]);
    }
}
