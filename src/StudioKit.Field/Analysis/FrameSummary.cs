using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>Turns blocks and what they show into the figures of a frame analysis.</summary>
internal sealed class FrameSummary
{
    private const int CellsAlong = 24;
    private const int CellsAcross = 16;
    private const int TilesAlong = 12;
    private const int TilesAcross = 8;
    private const double Tail = 0.005;
    private const double LeastTintLight = 0.125;
    private const double Floor = 1.0 / 65535;
    private readonly BlockGrid _grid;
    private readonly FrameArea[] _areas;
    private readonly ToneCurve _curve;
    private readonly double[] _backgroundStops;

    private FrameSummary(BlockGrid grid, FrameArea[] areas, ToneCurve curve)
    {
        _curve = curve;
        _grid = grid;
        _areas = areas;
        _backgroundStops = [.. Of(FrameArea.Background).Select(StopsUnderClipping).Order()];
    }

    private bool IsWide => _grid.Columns >= _grid.Rows;

    public static FrameAnalysis Of(IRowSource picture, BlockGrid grid, FrameArea[] areas, ToneCurve curve)
    {
        var summary = new FrameSummary(grid, areas, curve);
        var seen = new SeenPicture(picture.Settings.Orientation, picture.Width, picture.Height);
        var (columns, rows) = summary.IsWide ? (CellsAlong, CellsAcross) : (CellsAcross, CellsAlong);
        columns = Math.Min(columns, grid.Columns);
        rows = Math.Min(rows, grid.Rows);
        var cells = summary.Gather(columns, rows, FrameArea.Background);
        var subject = summary.Of(FrameArea.Subject).ToList();

        return new FrameAnalysis
        {
            Path = picture.Name,
            Width = seen.Width,
            Height = seen.Height,
            Settings = picture.Settings,
            BackgroundShare = summary.Share(FrameArea.Background),
            SubjectShare = summary.Share(FrameArea.Subject),
            ClippedShare = ClippedOverAll(cells),
            StopsMissing = summary.Percentile(1 - Tail),
            UnevennessStops = summary.Percentile(1 - Tail) - summary.Percentile(Tail),
            UnevennessIsLeast = summary.Of(FrameArea.Background).Any(block => block.White > 0.5),
            Tint = summary.Tint(),
            Veil = SubjectLight.Veil(subject),
            Tones = SubjectLight.Tones(subject),
            Regions = summary.Regions(),
            CellColumns = columns,
            CellRows = rows,
            Cells = [.. cells.Select(Cell)],
            Sharpness = summary.Sharpness(),
            Thumbnail = summary.Thumbnail(),
            Curve = curve,
            Caveats = [.. summary.Caveats(picture.Settings)],
        };
    }

    private static FrameCell Cell((BlockStatistics Sum, double White, int All) cell) => cell.Sum.Pixels == 0
        ? default
        : new FrameCell((double)cell.Sum.Pixels / cell.All, Clipped(cell.Sum.Pixels, cell.White), cell.Sum.Darkest);

    // Each cell is clamped by itself, so that an evenly lit patch just under clipping cannot eat into the white elsewhere.
    private static double ClippedOverAll((BlockStatistics Sum, double White, int All)[] cells)
    {
        var background = cells.Sum(cell => (double)cell.Sum.Pixels);
        return background == 0 ? 0 : cells.Sum(cell => Clipped(cell.Sum.Pixels, cell.White) * cell.Sum.Pixels) / background;
    }

    private static double Clipped(int pixels, double white) => pixels == 0 ? 0 : Math.Clamp(white / pixels, 0, 1);

    private static BlockStatistics Sum(IEnumerable<BlockStatistics> blocks)
    {
        var sum = default(BlockStatistics);
        foreach (var block in blocks)
        {
            sum.Add(block);
        }

        return sum;
    }

    private static double StopsUnderClipping(BlockStatistics block) =>
        block.White > 0.5 ? 0 : -Math.Log2(Math.Max(block.Darkest, Floor));

    private IEnumerable<BlockStatistics> Of(FrameArea area) =>
        Enumerable.Range(0, _areas.Length).Where(i => _areas[i] == area).Select(i => _grid.Blocks[i]);

    private double Share(FrameArea area) =>
        Of(area).Sum(block => (double)block.Pixels) / _grid.Blocks.Sum(block => (double)block.Pixels);

    private double Percentile(double share) => _backgroundStops.Length == 0
        ? 0
        : _backgroundStops[(int)Math.Round(share * (_backgroundStops.Length - 1))];

    private BackgroundTint? Tint()
    {
        // No channel of a block clipped, and none further under than a mid-tone lies: further down, noise and the tone curve's toe count more.
        var (red, green, blue) = Sum(Of(FrameArea.Background).Where(block =>
            block is { Darkest: > LeastTintLight, ClippedRed: 0, ClippedGreen: 0, ClippedBlue: 0 })) is { Pixels: > 0 } sum ? sum.Mean : default;
        return green == 0 ? null : new BackgroundTint(Math.Log2(red / green), Math.Log2(blue / green));
    }

    private List<FrameRegion> Regions()
    {
        string[] names =
        [
            "top left corner", "top edge", "top right corner", "left edge", "centre", "right edge",
            "bottom left corner", "bottom edge", "bottom right corner",
        ];
        var white = Gather(3, 3, FrameArea.Background);
        var stops = Enumerable.Range(0, 9).Select(_ => new List<double>()).ToArray();
        for (var i = 0; i < _areas.Length; i++)
        {
            if (_areas[i] == FrameArea.Background)
            {
                stops[CellOf(i, 3, 3)].Add(StopsUnderClipping(_grid.Blocks[i]));
            }
        }

        return [.. names.Select((name, i) => new FrameRegion(name, Clipped(white[i].Sum.Pixels, white[i].White), Darkest(stops[i])))];
    }

    // But for the same half percent that the whole frame leaves out.
    private static double Darkest(List<double> stops) => stops.Count == 0 ? 0 : stops.Order().ElementAt((int)Math.Round((1 - Tail) * (stops.Count - 1)));

    private (BlockStatistics Sum, double White, int All)[] Gather(int columns, int rows, FrameArea? area)
    {
        var cells = new (BlockStatistics Sum, double White, int All)[columns * rows];
        for (var i = 0; i < _areas.Length; i++)
        {
            ref var cell = ref cells[CellOf(i, columns, rows)];
            cell.All += _grid.Blocks[i].Pixels;
            if (area is null || _areas[i] == area)
            {
                cell.Sum.Add(_grid.Blocks[i]);
                cell.White += _grid.Blocks[i].White * _grid.Blocks[i].Pixels;
            }
        }

        return cells;
    }

    private int CellOf(int block, int columns, int rows) =>
        (block / _grid.Columns * rows / _grid.Rows * columns) + (block % _grid.Columns * columns / _grid.Columns);

    private SharpnessMap Sharpness()
    {
        var (columns, rows) = IsWide ? (TilesAlong, TilesAcross) : (TilesAcross, TilesAlong);
        columns = Math.Min(columns, _grid.Columns);
        rows = Math.Min(rows, _grid.Rows);
        var steps = Gather(columns, rows, null).Select(tile => tile.Sum.Pixels == 0 ? 0 : Math.Sqrt(tile.Sum.Detail)).ToList();
        var best = steps.Max();
        return new SharpnessMap(columns, rows, [.. steps.Select(step => best == 0 ? 0 : step / best)], best);
    }

    private FrameThumbnail Thumbnail()
    {
        var rgb = _grid.Blocks.Select(block => block.Mean).SelectMany(mean => new[] { Encode(mean.Red), Encode(mean.Green), Encode(mean.Blue) });
        var unclipped = _grid.Blocks.Select((block, i) => _areas[i] == FrameArea.Background && block.White < 0.5);
        return new FrameThumbnail(_grid.Columns, _grid.Rows, [.. rgb], _areas, [.. unclipped]);
    }

    private byte Encode(double light) =>
        (byte)Math.Round(255 * _curve.Encoded(Math.Clamp(light, 0, 1)));

    private IEnumerable<string> Caveats(FrameSettings settings)
    {
        foreach (var doubt in settings.Doubts)
        {
            yield return doubt;
        }

        if (Share(FrameArea.Background) < 0.05)
        {
            yield return "Hardly any background was found: the figures for it mean little.";
        }
    }
}
