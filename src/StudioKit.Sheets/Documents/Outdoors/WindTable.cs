using System.Globalization;
using StudioKit.Physics.Structure;
using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Documents.Outdoors;

/// <summary>The wind by what is seen, and from which force on what stands has to come down.</summary>
internal static class WindTable
{
    /// <summary>The table; none where nothing stands in the wind.</summary>
    public static IEnumerable<Block> Of(Plan plan, double sizePt)
    {
        if (Down(plan) is not { } down)
        {
            yield break;
        }

        yield return new Heading("Wind, by what is seen", 3);
        yield return new Table(
            [new Column("Beaufort", ColumnKind.Right), new Column("Seen"), new Column("Mean up to", ColumnKind.Right), new Column("Studio")],
            [.. Enumerable.Range(0, Math.Min(WindSigns.Strongest, down + 1) + 1).Select(force => new TableRow(
                [
                    force.ToString(CultureInfo.InvariantCulture), WindSigns.Seen(force), MeasureFormat.Speed(Speed.FromMetersPerSecond(Beaufort.HighestMean(force))),
                    force < down ? "stands" : "TAKE IT DOWN",
                ]))],
            sizePt);
    }

    // The first force that one of the things that stand was not planned for.
    private static int? Down(Plan plan)
    {
        int?[] forces = [plan.Frame?.Wind is { } wind ? wind.Beaufort + 1 : null, .. plan.Workshop?.Uprights.Select(upright => (int?)upright.TakeDownFrom) ?? []];
        return forces.Min();
    }
}
