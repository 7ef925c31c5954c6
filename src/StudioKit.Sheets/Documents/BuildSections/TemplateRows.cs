using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Small templates in rows of columns: the tallest first, each under or beside the first that leaves it room, so that they take as few pages as they may.</summary>
internal static class TemplateRows
{
    private const double Gap = 6;

    // Two lines of caption and the gap over the next.
    private const double UnderEach = 10;

    public static IEnumerable<Block> Of(IReadOnlyList<Drawing> drawings, double width)
    {
        var rows = new List<List<List<Drawing>>>();
        foreach (var drawing in drawings.OrderByDescending(drawing => drawing.Bounds.Height))
        {
            if (rows.SelectMany(row => row.Skip(1).Where(column => GoesUnder(row, column, drawing))).FirstOrDefault() is { } above)
            {
                above.Add(drawing);
            }
            else if (rows.Find(row => row.Sum(column => Wide(column) + Gap) + drawing.Bounds.Width <= width) is { } row)
            {
                row.Add([drawing]);
            }
            else
            {
                rows.Add([[drawing]]);
            }
        }

        return rows.Select(row => new SideBySide([.. row.Select(column => ((Block)new Stack([.. column.Select(Template)]), Wide(column)))], Gap));
    }

    private static bool GoesUnder(List<List<Drawing>> row, List<Drawing> column, Drawing drawing) =>
        drawing.Bounds.Width <= Wide(column) && column.Append(drawing).Sum(one => one.Bounds.Height + UnderEach) <= row[0][0].Bounds.Height + UnderEach;

    private static double Wide(List<Drawing> column) => column.Max(drawing => drawing.Bounds.Width);

    private static DrawingBlock Template(Drawing drawing) => new(drawing, TrueScale: true, Caption: $"{drawing.Title}, full size");
}
