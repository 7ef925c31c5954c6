namespace StudioKit.Field.Analysis;

/// <summary>Tells the background from the subject: the background is what light falls off over smoothly from where it is brightest.</summary>
/// <remarks>
/// A block is smooth when the light within two blocks of it varies by less than <see cref="SmoothStops"/>. Light on a panel falls off by at
/// most a few stops over a whole frame of some 400 blocks, so it passes; a subject's outline does not. The background is all that smooth
/// blocks connect to the brightest ones, and anything cut off from it that reaches into a corner of the frame: what lies beyond the
/// panel is background too, and not white.
/// </remarks>
internal sealed class FrameSegmentation
{
    private const double SmoothStops = 0.35;
    private const double EvenStops = 0.18;
    private const double AlikeStops = 0.1;
    private const double SeedStops = 0.5;
    private const int Reach = 2;
    private const double Floor = 1.0 / 4096;
    private readonly BlockGrid _grid;
    private readonly double[] _stops;
    private FrameArea[] _areas;

    private FrameSegmentation(BlockGrid grid)
    {
        _grid = grid;
        _stops = [.. grid.Blocks.Select(block => Math.Log2(Math.Max(block.Darkest, Floor)))];
        _areas = new FrameArea[_stops.Length];
    }

    /// <summary>What each block shows.</summary>
    public IReadOnlyList<FrameArea> Areas => _areas;

    /// <summary>Why background and subject cannot be told apart for sure, as a sentence; none where they can.</summary>
    public string? Doubt { get; private set; }

    public static FrameSegmentation OfBareFrame(BlockGrid grid)
    {
        var segmentation = new FrameSegmentation(grid);
        Array.Fill(segmentation._areas, FrameArea.Background);
        return segmentation;
    }

    public static FrameSegmentation Of(BlockGrid grid)
    {
        var segmentation = new FrameSegmentation(grid);
        var unevenness = segmentation.Unevenness();
        var smooth = Under(unevenness, SmoothStops);
        segmentation.Flood(segmentation.Seeds(smooth), smooth, FrameArea.Background);
        segmentation.GrowToOutline();
        segmentation.Doubt = new BackgroundDoubt(grid, segmentation._stops, segmentation._areas).Reason(segmentation.Evenly(unevenness));
        segmentation.TakeCorners();
        segmentation.MarkSubject();
        return segmentation;
    }

    private static bool[] Under(double[] unevenness, double limit) => [.. unevenness.Select(stops => stops < limit)];

    // The background as it would be if light were allowed to change only as a panel's can.
    private FrameArea[] Evenly(double[] unevenness)
    {
        var found = _areas;
        _areas = new FrameArea[found.Length];
        var even = Under(unevenness, EvenStops);
        Flood(Seeds(even), even, FrameArea.Background);
        (var evenly, _areas) = (_areas, found);
        return evenly;
    }

    // Brightest to darkest around each block, in stops.
    private double[] Unevenness()
    {
        // Rows first, then columns: a running minimum and maximum separate.
        var (low, high) = Extremes(_stops, _stops, 1, 0);
        (low, high) = Extremes(low, high, 0, 1);
        return [.. low.Zip(high, (least, most) => most - least)];
    }

    private (double[] Low, double[] High) Extremes(double[] low, double[] high, int right, int down)
    {
        var (least, most) = (new double[low.Length], new double[low.Length]);
        for (var i = 0; i < low.Length; i++)
        {
            var (column, row) = (i % _grid.Columns, i / _grid.Columns);
            (least[i], most[i]) = (double.MaxValue, double.MinValue);
            for (var step = -Reach; step <= Reach; step++)
            {
                var (x, y) = (column + (step * right), row + (step * down));
                if (x >= 0 && y >= 0 && x < _grid.Columns && y < _grid.Rows)
                {
                    least[i] = Math.Min(least[i], low[(y * _grid.Columns) + x]);
                    most[i] = Math.Max(most[i], high[(y * _grid.Columns) + x]);
                }
            }
        }

        return (least, most);
    }

    private List<int> Seeds(bool[] smooth)
    {
        var candidates = Enumerable.Range(0, smooth.Length).Where(i => smooth[i]).ToList();
        var brightest = candidates.Count == 0 ? 0 : candidates.Max(i => _stops[i]);
        return [.. candidates.Where(i => _stops[i] > brightest - SeedStops)];
    }

    private List<int> Flood(IEnumerable<int> seeds, bool[] passable, FrameArea area)
    {
        var open = new Stack<int>(seeds);
        var reached = new List<int>();
        while (open.TryPop(out var i))
        {
            if (!passable[i] || _areas[i] == area)
            {
                continue;
            }

            _areas[i] = area;
            reached.Add(i);
            foreach (var next in Neighbours(i))
            {
                open.Push(next);
            }
        }

        return reached;
    }

    // Blocks beside an outline failed as not smooth for the outline's sake only; those that are as bright as the background next to them are
    // background, and dropping them would bias the clipped share by a percent or more.
    private void GrowToOutline()
    {
        for (var pass = 0; pass < Reach; pass++)
        {
            var grown = Enumerable.Range(0, _areas.Length).Where(i => _areas[i] == FrameArea.Outline && Neighbours(i).Any(next =>
                _areas[next] == FrameArea.Background && Math.Abs(_stops[i] - _stops[next]) < AlikeStops)).ToList();
            grown.ForEach(i => _areas[i] = FrameArea.Background);
        }
    }

    private void TakeCorners()
    {
        var corners = new[] { 0, _grid.Columns - 1, _areas.Length - _grid.Columns, _areas.Length - 1 };
        var unreached = _areas.Select(area => area == FrameArea.Outline).ToArray();
        Flood(corners, unreached, FrameArea.Background);
    }

    // What is at least two blocks away from any background is surely subject; the rest is outline.
    private void MarkSubject()
    {
        var background = _areas.Select(area => area == FrameArea.Background ? 1.0 : 0.0).ToArray();
        var (_, near) = Extremes(background, background, 1, 0);
        (_, near) = Extremes(near, near, 0, 1);
        for (var i = 0; i < _areas.Length; i++)
        {
            _areas[i] = near[i] == 0 ? FrameArea.Subject : _areas[i];
        }
    }

    private IEnumerable<int> Neighbours(int i)
    {
        var column = i % _grid.Columns;
        if (column > 0)
        {
            yield return i - 1;
        }

        if (column < _grid.Columns - 1)
        {
            yield return i + 1;
        }

        if (i >= _grid.Columns)
        {
            yield return i - _grid.Columns;
        }

        if (i + _grid.Columns < _areas.Length)
        {
            yield return i + _grid.Columns;
        }
    }
}
