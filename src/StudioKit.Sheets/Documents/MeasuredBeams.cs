using StudioKit.Kits.Lighting;
using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The files of measured light distributions that a plan was made with, and how wide their beams are.</summary>
internal static class MeasuredBeams
{
    public static IEnumerable<Block> Of(Plan plan)
    {
        var named = plan.Kit.Flashes.Select(flash => (flash.Name, Beam: flash.LightDistribution))
            .Concat(plan.Kit.Modifiers.Select(modifier => (modifier.Name, Beam: modifier.LightDistribution)))
            .Where(one => one.Beam is not null).Select(one => (one.Name, Beam: one.Beam!)).ToList();
        return named.Count == 0 ? [] :
        [
            new Heading("Measured light distributions", 2),
            new Paragraph("Only the shape of a beam is taken from its file, relative to its axis; how bright the axis is follows from the guide number, and of a modifier from what it loses.", TypeScale.Small),
            new Table(
                [
                    new Column("Of"), new Column("File"), new Column("Width at half intensity", ColumnKind.Decimal), new Column("Height at half intensity", ColumnKind.Decimal),
                    new Column("Its candelas"),
                ],
                [.. named.Select(one => Row(one.Name, one.Beam))],
                TypeScale.Small),
        ];
    }

    private static TableRow Row(string name, LightDistribution beam) =>
        new([name, beam.FileName, MeasureFormat.Degrees(beam.BeamWidth), MeasureFormat.Degrees(beam.BeamHeight), beam.IsAbsolute ? "as measured" : "of a lamp of so many lumens"]);
}
