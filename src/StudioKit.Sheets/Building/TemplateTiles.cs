using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Building;

/// <summary>A drawing at full size, spread over pages that are laid together by their crosses.</summary>
internal static class TemplateTiles
{
    // Neighbouring pages share this much, so that their crosses can be laid on each other.
    private const double Shared = 10;
    private const double CrossArm = 4;
    private const double ScaleBar = 100;
    private const double FootRoom = 16;
    private const double CaptionRoom = 8;
    private static readonly double[] CrossShares = [0.2, 0.8];

    /// <summary>One block a tile; tiles with nothing on them are left out, and the drawing is turned where fewer are left then.</summary>
    /// <param name="drawing">The template, at full size.</param>
    /// <param name="room">The page's body [mm].</param>
    public static IReadOnlyList<Block> Of(Drawing drawing, Bounds room) => OfFewest([drawing], room).Tiles;

    /// <summary>Of several drawings that serve alike, the first of those that take fewest pages.</summary>
    /// <param name="drawings">The templates, at full size; at least one.</param>
    /// <param name="room">The page's body [mm].</param>
    /// <returns>Which it is, counted from 0, and its tiles.</returns>
    public static (int Which, IReadOnlyList<Block> Tiles) OfFewest(IReadOnlyList<Drawing> drawings, Bounds room)
    {
        var (which, tiles) = drawings
            .SelectMany((drawing, i) => new[] { (Which: i, Tiles: Tiled(drawing, room)), (Which: i, Tiles: Tiled(drawing.Under(new Similarity(1, -Math.PI / 2, 0, 0)), room)) })
            .MinBy(way => Takes(way.Tiles, room));
        return (which, tiles);
    }

    // Pages that tiles fill when small ones share one.
    private static int Takes(IReadOnlyList<DrawingBlock> tiles, Bounds room)
    {
        var (pages, left) = (0, 0.0);
        foreach (var tall in tiles.Select(tile => tile.Drawing.Bounds.Height + CaptionRoom))
        {
            (pages, left) = tall > left ? (pages + 1, room.Height - tall) : (pages, left - tall);
        }

        return pages;
    }

    private static IReadOnlyList<DrawingBlock> Tiled(Drawing drawing, Bounds room)
    {
        var bounds = drawing.Bounds.Grown(2);
        var (width, height) = (room.Width, room.Height - FootRoom - CaptionRoom);
        var (columns, rows) = (Count(bounds.Width, width), Count(bounds.Height, height));
        var tiles =
            from row in Enumerable.Range(0, rows)
            from column in Enumerable.Range(0, columns)
            let left = bounds.Left + (column * (width - Shared))
            let top = bounds.Top + (row * (height - Shared))
            let window = new Bounds(left, top, Math.Min(bounds.Right, left + width), Math.Min(bounds.Bottom, top + height))
            let lines = ClippedLines.Of(drawing.PlainMarks(), window)
            where lines.Count > 0
            select (Name: FormattableString.Invariant($"{(char)('A' + row)}{column + 1}"), window, lines, column, row);
        var pages = tiles.ToList();
        return [.. pages.Select(tile => Page(drawing, tile.Name, tile.window, tile.lines, pages.Count, Crosses(tile.window, tile.column, tile.row, columns, rows)))];
    }

    private static int Count(double length, double page) => Math.Max(1, (int)Math.Ceiling((length - Shared) / (page - Shared)));

    private static DrawingBlock Page(Drawing drawing, string name, Bounds window, IReadOnlyList<Line> lines, int count, IEnumerable<Primitive> crosses)
    {
        var labels = drawing.PlainMarks().OfType<Label>().Where(label => Inside(label.Bounds, window));
        var bar = window.Bottom + 8;
        List<Primitive> marks =
        [
            .. lines, .. labels, .. crosses,
            new Line(new Point(window.Left, bar), new Point(window.Left + ScaleBar, bar), Stroke.Edge),
            new Line(new Point(window.Left, bar - 2), new Point(window.Left, bar + 2), Stroke.Edge),
            new Line(new Point(window.Left + ScaleBar, bar - 2), new Point(window.Left + ScaleBar, bar + 2), Stroke.Edge),
            new Label(new Point(window.Left + ScaleBar + 3, bar), "100 mm: measure it", 8, Rise: TextRise.Middle),
        ];
        var part = count == 1 ? "full size" : FormattableString.Invariant($"part {name} of {count}, full size");
        var tile = new Drawing(FormattableString.Invariant($"{drawing.Title}, {part}"), drawing.Description, marks);
        return new DrawingBlock(tile, TrueScale: true, Caption: tile.Title);
    }

    private static bool Inside(Bounds label, Bounds window) =>
        label.Left >= window.Left - 0.01 && label.Right <= window.Right + 0.01 && label.Top >= window.Top - 0.01 && label.Bottom <= window.Bottom + 0.01;

    // Two crosses on every shared edge, in the middle of what the two pages share.
    private static IEnumerable<Primitive> Crosses(Bounds window, int column, int row, int columns, int rows)
    {
        var middle = Shared / 2;
        double[] xs = [.. column > 0 ? [window.Left + middle] : Array.Empty<double>(), .. column < columns - 1 ? [window.Right - middle] : Array.Empty<double>()];
        double[] ys = [.. row > 0 ? [window.Top + middle] : Array.Empty<double>(), .. row < rows - 1 ? [window.Bottom - middle] : Array.Empty<double>()];
        var places = xs.SelectMany(x => CrossShares.Select(share => new Point(x, window.Top + (share * window.Height))))
            .Concat(ys.SelectMany(y => CrossShares.Select(share => new Point(window.Left + (share * window.Width), y))));
        return places.SelectMany(place => new Primitive[]
        {
            new Line(place.Plus(-CrossArm, 0), place.Plus(CrossArm, 0), Stroke.Thin),
            new Line(place.Plus(0, -CrossArm), place.Plus(0, CrossArm), Stroke.Thin),
            new Circle(place, 1.5, Stroke.Thin),
        });
    }
}
