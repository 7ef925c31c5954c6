using System.Globalization;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Documents;

/// <summary>Maps over a frame one above the other, told apart by hatching and numbers so that no colour is needed.</summary>
public static class FrameMapDrawing
{
    private const double Width = 150;
    private const double TitleHeight = 8;
    private const double LegendHeight = 8;
    private const double Gap = 4;

    // Numbers in every cell could not be read; this many across can.
    private const int NumbersAcross = 8;

    /// <summary>Draws the maps.</summary>
    /// <param name="maps">The maps, first on top.</param>
    public static Drawing Of(IReadOnlyList<FrameMap> maps)
    {
        ArgumentNullException.ThrowIfNull(maps);
        var marks = new List<Primitive>();
        var top = 0.0;
        foreach (var map in maps)
        {
            var cell = CellSize(map);
            marks.Add(new Label(new Point(0, top + 5), map.Title, 11, Weight: TextWeight.Bold));
            marks.AddRange(Cells(map).SelectMany(entry => Cell(map, entry, new Point(0, top + TitleHeight), cell)));
            marks.Add(Polygon.Rectangle(new Bounds(0, top + TitleHeight, Width, top + TitleHeight + (map.Rows * cell)), Stroke.Edge));
            marks.AddRange(Numbers(map, top + TitleHeight, cell));
            top += TitleHeight + (map.Rows * cell);
            marks.Add(new Label(new Point(0, top + 5), Legend(map), 8.5));
            top += LegendHeight + Gap;
        }

        return new Drawing("White margin over the frame", string.Join("; ", maps.Select(map => map.Title)), marks);
    }

    private static double CellSize(FrameMap map) => Width / Math.Max(map.Columns, map.Rows);

    private static string Legend(FrameMap map) => map.IsDifference
        ? FormattableString.Invariant($"Hatched: darker than planned. Grey: brighter. Blank: within {MarginBands.Same.Value:0.##} stop. Cross: not measured.")
        : $"Hatched: not white. Grey: white with less than {MarginBands.Spare.Nominal.TrimStart('+')} stop to spare. Blank: white. Cross: unknown.";

    private static IEnumerable<(int Column, int Row, double Stops)> Cells(FrameMap map) =>
        map.Stops.Select((stops, i) => (i % map.Columns, i / map.Columns, stops));

    private static IEnumerable<Primitive> Cell(FrameMap map, (int Column, int Row, double Stops) entry, Point corner, double size)
    {
        var (left, top) = (corner.X + (entry.Column * size), corner.Y + (entry.Row * size));
        var area = new Bounds(left, top, left + size, top + size);
        var band = map.IsDifference ? MarginBands.OfDifference(entry.Stops) : MarginBands.OfMargin(entry.Stops);
        if (band == MarginBand.Unknown)
        {
            yield return new Line(new Point(area.Left, area.Top), new Point(area.Right, area.Bottom), Stroke.Thin);
            yield return new Line(new Point(area.Left, area.Bottom), new Point(area.Right, area.Top), Stroke.Thin);
        }
        else if (FillOf(band) is var fill and not Fill.None)
        {
            yield return Polygon.Rectangle(area, null, fill);
        }
    }

    private static Fill FillOf(MarginBand band) => band switch
    {
        MarginBand.Dark => Fill.Hatch,
        MarginBand.Tight or MarginBand.Bright => Fill.LightGrey,
        _ => Fill.None,
    };

    private static IEnumerable<Primitive> Numbers(FrameMap map, double top, double size)
    {
        var step = Math.Max(1, map.Columns / NumbersAcross);
        foreach (var (column, row, stops) in Cells(map).Where(cell => double.IsFinite(cell.Stops) && cell.Column % step == step / 2 && cell.Row % step == step / 2))
        {
            var label = new Label(
                new Point((column + 0.5) * size, top + ((row + 0.5) * size)), stops.ToString("+0.0;−0.0", CultureInfo.InvariantCulture), 8.5, TextAnchor.Middle, TextRise.Middle);
            yield return Polygon.Rectangle(label.Bounds.Grown(0.4), null, Fill.White);
            yield return label;
        }
    }
}
