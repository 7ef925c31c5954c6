using StudioKit.Kits.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Features;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The starting exposures of one set-up: a row for each framing, then a light budget for each flash with the framings beside each other.</summary>
internal static class ExposureSection
{
    // More framings than this beside each other leave no room for their names.
    private const int WidestBudget = 6;

    public static IEnumerable<Block> Of(IReadOnlyList<ExposurePlan> setUp, IReadOnlyList<FeaturePlan> features, CoverPlan? cover, IReadOnlyList<LightStandPlan> stands)
    {
        yield return new Heading(setUp[0].SetUp, 3);
        foreach (var block in Settings(setUp))
        {
            yield return block;
        }

        foreach (var block in LightPlaceTable.Of(setUp, stands))
        {
            yield return block;
        }

        yield return SharpnessTable.Of(setUp);
        foreach (var block in CoverTable.Of(cover).Concat(FeatureTable.Of(features)))
        {
            yield return block;
        }

        foreach (var block in BeforeSheetTable.Of(setUp))
        {
            yield return block;
        }

        foreach (var block in MeteredTable.Of(setUp))
        {
            yield return block;
        }
    }

    /// <summary>The account of each flash, framings beside each other.</summary>
    public static IEnumerable<Block> Budgets(IReadOnlyList<ExposurePlan> setUp)
    {
        foreach (var some in setUp.Where(exposure => exposure.Lights.Count > 0).Chunk(WidestBudget))
        {
            for (var i = 0; i < some.Max(exposure => exposure.Lights.Count); i++)
            {
                yield return new KeepTogether(Budget([.. some.Where(exposure => exposure.Lights.Count > i)], i));
            }
        }
    }

    // A column for each flash, so that a framing takes one line; what is the same for all of them stands over the table.
    private static IEnumerable<Block> Settings(IReadOnlyList<ExposurePlan> setUp)
    {
        var white = setUp.Any(exposure => exposure.WhiteMargin is not null);
        var roles = setUp.SelectMany(exposure => exposure.Lights).Select(light => light.Role).Distinct().ToList();
        var lights = roles.Select(role => $" {RoleText.Title(role)}: {string.Join("; ", Lights(setUp, role).Select(LightNames.WithZoom).Distinct())}.");
        yield return new Paragraph($"Made for {AmbientText.Of(setUp[0])}; the cards say what to set in other light.{string.Concat(lights)}", TypeScale.Small);
        yield return new Table(
            [
                new Column("Framing"), new Column("Aperture"), new Column("Effective"), new Column("Shutter"), new Column("ISO", ColumnKind.Right), .. roles.Select(role => new Column(Sole(setUp, role) is { } distance ? $"{RoleText.Title(role)}, at {distance}" : RoleText.Title(role), ColumnKind.Right)),
                .. white ? (Column[])[new Column("White margin, stops", ColumnKind.Right)] : [], new Column("Unsure by, stops", ColumnKind.Right), new Column("First frame"),
            ],
            [.. setUp.Select(exposure => new TableRow(
                [
                    exposure.Framing.Name, exposure.Aperture.Nominal, exposure.EffectiveAperture.Nominal, exposure.Shutter.Nominal, exposure.Iso.Mark,
                    .. roles.Select(role => exposure.IsUsable ? string.Join("; ", exposure.Lights.Where(light => light.Role == role).Select(light => Sole(setUp, role) is null ? $"{light.PowerText} at {DistanceFormat.Centimetres(light.Distance)}" : light.PowerText)) : "–"),
                    .. white ? (string[])[exposure.WhiteMargin?.Nominal ?? ""] : [], "±" + exposure.Uncertainty.Nominal.TrimStart('+', '-'), VerdictText.FirstFrame(exposure),
                ]))],
            TypeScale.Tables);
        var missed = setUp.Where(exposure => !exposure.IsUsable).Select(exposure => $"{exposure.Framing.Name}: {VerdictText.Missed(exposure)}").ToList();
        if (missed.Count > 0)
        {
            yield return new ItemList(missed, ItemMarker.Dot, TypeScale.Small);
        }
    }

    private static IEnumerable<LightPlan> Lights(IReadOnlyList<ExposurePlan> setUp, LightRole role) => setUp.SelectMany(exposure => exposure.Lights).Where(light => light.Role == role);

    // The distance that a role's lights have in every framing; nothing where it differs.
    private static string? Sole(IReadOnlyList<ExposurePlan> setUp, LightRole role) =>
        Lights(setUp, role).Select(light => DistanceFormat.Centimetres(light.Distance)).Distinct().ToList() is [var distance] ? distance : null;

    private static Stack Budget(IReadOnlyList<ExposurePlan> exposures, int light)
    {
        var lights = exposures.Select(exposure => exposure.Lights[light]).ToList();
        var names = lights.Select(LightNames.WithZoom).Distinct().ToList();
        var items = lights.SelectMany(one => one.Budget.Lines.Select(line => line.Item)).Distinct().ToList();
        var same = lights.Count < 2 ? [] : items.Where(item => lights.Select(one => Stops(one, item)).Distinct().Count() == 1).ToList();
        return new Stack(
            [
                new Paragraph($"{RoleText.Title(lights[0].Role)}: {string.Join("; ", names)}", TypeScale.Small, Fonts.TextWeight.Bold),
                .. same.Count == 0 ? (Block[])[] : [new Paragraph($"The same for all: {string.Join("; ", same.Select(item => $"{item} {Stops(lights[0], item)}"))}.", TypeScale.Smallest)],
                new Table(
                    [new Column("Gain or loss"), .. exposures.Select(exposure => new Column(exposure.Framing.Name, ColumnKind.Right))],
                    [
                        .. items.Except(same).Select(item => new TableRow([item, .. lights.Select(one => Stops(one, item))])),
                        new TableRow(["Sum", .. lights.Select(one => one.Budget.Total.ToString())], Total: true),
                    ],
                    TypeScale.Smallest),
            ],
            0.8);
    }

    private static string Stops(LightPlan light, string item)
    {
        var lines = light.Budget.Lines.Where(line => line.Item == item).ToList();
        return lines.Count == 0 ? "" : string.Join(", ", lines.Select(line => line.Stops.ToString()));
    }
}
