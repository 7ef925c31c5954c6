using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The parts of an exposure card in the order of their weight.</summary>
internal static class ExposureCardParts
{
    /// <summary>Parts for front and back.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <param name="type">Sizes of type.</param>
    /// <param name="moved">How many of the last parts go to the back: 0, 1 (the budget) or 2 (the remedies too).</param>
    public static (IReadOnlyList<Block> Front, IReadOnlyList<Block> Back) Of(ExposurePlan exposure, CardType type, int moved)
    {
        if (!exposure.Works)
        {
            return ([.. Head(exposure), .. Impossible(exposure)], []);
        }

        List<Block> front = [.. Head(exposure), .. Settings(exposure, type), new BoxedText("Check", exposure.Check, type.Check)];
        List<Block> back = [];
        (moved < 2 ? front : back).AddRange(Remedies(exposure, type));
        if (exposure.Lights.Count > 0)
        {
            (moved < 1 ? front : back).AddRange(moved < 1 ? BudgetInBrief(exposure) : [BudgetColumns(exposure)]);
        }

        return (front, back.Count == 0 ? back : [.. Head(exposure), .. back]);
    }

    private static IEnumerable<Block> Head(ExposurePlan exposure)
    {
        var with = exposure.Framing.Accessories.Concat(exposure.Filter is null ? [] : [exposure.Filter]).ToList();
        var distance = FormattableString.Invariant($"glass to subject {PlanFormat.Millimetres(exposure.Framing.WorkingDistance)}");
        yield return new Stack(
            [
                new Paragraph(exposure.SetUp, 10),
                new Paragraph(exposure.Framing.Name, 16, TextWeight.Bold),
                new Paragraph(with.Count == 0 ? $"Lens alone, {distance}" : $"With {string.Join(", ", with)}; {distance}", 7.5),
            ],
            0.4);
        yield return new Rule(Stroke.Heavy);
    }

    private static IEnumerable<Block> Settings(ExposurePlan exposure, CardType type)
    {
        yield return new FigureRow(
            [
                new BigFigure("aperture", exposure.Aperture.Nominal),
                Shutter(exposure.Shutter.Nominal),
                new BigFigure("ISO", exposure.Iso.Nominal.Replace("ISO ", "", StringComparison.Ordinal)),
            ],
            type.Settings);
        foreach (var light in exposure.Lights)
        {
            yield return new Rule(Stroke.Thin);
            yield return new FlashRow(
                LightNames.Role(light.Role), LightNames.WithModifier(light), light.PowerMark, Split(PlanFormat.Centimetres(light.Distance)), type.Flashes);
        }
    }

    private static BigFigure Shutter(string nominal)
    {
        var (figure, unit) = Split(nominal);
        return new BigFigure("shutter", figure, unit);
    }

    private static (string Figure, string Unit) Split(string measure)
    {
        var space = measure.LastIndexOf(' ');
        return space < 0 ? (measure, "") : (measure[..space], measure[(space + 1)..]);
    }

    private static IEnumerable<Block> Remedies(ExposurePlan exposure, CardType type) =>
        exposure.Remedies.Count == 0 ? [] : [new RemedyTable(exposure.Remedies, type.Remedies)];

    // As running text, a budget takes half the height that a column takes.
    private static IEnumerable<Block> BudgetInBrief(ExposurePlan exposure)
    {
        yield return new Rule(Stroke.Thin);
        yield return new Stack(
            [.. exposure.Lights.Select(light => new Paragraph(
                $"{LightNames.Role(light.Role)}, stops: {string.Join(", ", light.Budget.Lines.Select(line => $"{line.Item} {line.Stops}"))}; sum {light.Budget.Total}",
                TypeScale.Smallest))],
            0.6);
    }

    private static SideBySide BudgetColumns(ExposurePlan exposure) => new(
        [.. exposure.Lights.Select(light => ((Block)new BudgetColumn($"{LightNames.Role(light.Role)}: light budget", light.Budget), 1.0))], 4);

    private static IEnumerable<Block> Impossible(ExposurePlan exposure)
    {
        yield return new Caution(exposure.BindingLimit!, "This set-up does not work at this framing", 10);
        if (exposure.Changes.Count > 0)
        {
            yield return new Paragraph("What would make it work", 10, TextWeight.Bold);
            yield return new ItemList(exposure.Changes, ItemMarker.Dot, 9);
        }
    }
}
