using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What to dial where the camera meters a flash, and what its meter is taken to see, for the framings of one set-up.</summary>
internal static class MeteredTable
{
    public static IEnumerable<Block> Of(IReadOnlyList<ExposurePlan> setUp)
    {
        var rows = setUp.SelectMany(exposure => exposure.Lights.Where(light => light.Metered is not null).Select(light => Row(exposure, light, light.Metered!))).ToList();
        if (rows.Count == 0)
        {
            yield break;
        }

        yield return new Table(
            [
                new Column("Metered by the camera"), new Column("Flash"), new Column("Compensation, stops"), new Column("Subject, of what is metered", ColumnKind.Right),
                new Column("Throws back", ColumnKind.Right), new Column("Background throws back", ColumnKind.Right), new Column("Flash on the background, stops", ColumnKind.Right),
            ],
            rows,
            TypeScale.Tables);
    }

    /// <summary>What a camera's meter is taken to see; nothing where none meters a flash.</summary>
    public static IEnumerable<Block> Basis(IEnumerable<ExposurePlan> exposures) => exposures.Any(exposure => exposure.Lights.Any(light => light.Metered is not null))
        ? [new Paragraph(MeteredText.Basis, TypeScale.Small)]
        : [];

    private static TableRow Row(ExposurePlan exposure, LightPlan light, MeteredFlashPlan metered) => new(
    [
        exposure.Framing.Name, light.Flash, MeteredText.Dial(metered), MeasureFormat.Percent(Math.Round(metered.SubjectShare, 2)), MeasureFormat.Percent(Math.Round(metered.SubjectReflectance, 2)),
        MeasureFormat.Percent(Math.Round(metered.BackgroundReflectance, 2)), metered.BackgroundLevel.Nominal,
    ]);
}
