using StudioKit.Planning;
using StudioKit.Planning.Features;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Whether the features that decide what subjects are can be seen: a table for each feature, a row for each framing of one set-up.</summary>
internal static class FeatureTable
{
    public static IEnumerable<Block> Of(IReadOnlyList<FeaturePlan> features)
    {
        foreach (var feature in features.GroupBy(feature => feature.Subject))
        {
            yield return new KeepTogether(new Stack([new Paragraph($"Is it seen? {FeatureText.Name(feature.First())}, {Depth(feature.First())}.", TypeScale.Small, TextWeight.Bold), Table([.. feature])], 0.8));
        }
    }

    /// <summary>What the tables go by; nothing where there are none.</summary>
    public static IEnumerable<Block> Basis(IReadOnlyList<FeaturePlan> features) => features.Count == 0
        ? []
        :
        [
            new Paragraph(
                $"Features are seen from {MeasureFormat.TwoDigits(100 * FeaturePlan.Criterion)} % contrast on, which is what Rayleigh's criterion leaves of black and white. "
                + "Finest and lowest magnification: in focus, at the framing's aperture and as steady.",
                TypeScale.Small),
        ];

    private static Table Table(IReadOnlyList<FeaturePlan> framings) => new(
        [
            new Column("Framing"), new Column("Shows it whole"), new Column("Is it seen?"), new Column("Contrast left, %", ColumnKind.Decimal), new Column("Finest, µm", ColumnKind.Decimal),
            new Column($"Deep in one frame, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column("Lowest magnification"), new Column("Widest aperture"),
        ],
        [.. framings.Select(Row)],
        TypeScale.Tables);

    private static string Depth(FeaturePlan feature) => feature.Relief.Meters > 0 ? $"{PlanFormat.Millimetres(feature.Relief)} deep" : "flat";

    private static TableRow Row(FeaturePlan feature) => new(
    [
        feature.Framing,
        feature.ShownWhole ? "yes" : "no",
        FeatureText.Verdict(feature),
        MeasureFormat.ThreeDigits(100 * feature.Contrast),
        MeasureFormat.ThreeDigits(FeatureText.AsGiven(feature, feature.Finest).Micrometers),
        feature.Depth is { } depth ? FigureFormat.RoughFigure(depth) : "",
        FeatureText.Lowest(feature),
        feature.WidestAperture?.Nominal ?? "none",
    ]);
}
