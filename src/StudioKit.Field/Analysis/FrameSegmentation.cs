namespace StudioKit.Field.Analysis;

/// <summary>Tells the background from the subject: the background is the lit sheet, over which light changes smoothly, plainly and as far as the frame's edge.</summary>
/// <remarks>
/// Even parts of the frame come first, and which of them are the sheet (<see cref="SheetParts"/>). From there on a block is background when the light
/// within two blocks of it varies by less than <see cref="SmoothStops"/>, neither at once as at an outline nor with texture. Light on a panel falls off
/// by at most a few stops over a whole frame of some 400 blocks, so it passes; a subject's outline does not, however pale the subject. What is
/// cut off in a corner by straight edges lies beyond the panel, and is background too, and not white.
/// </remarks>
internal sealed class FrameSegmentation
{
    private const double SmoothStops = 0.35;
    private const double EvenStops = 0.18;
    private const double AlikeStops = 0.1;
    private const double AlikeWhite = 0.5;
    private readonly BlockGrid _grid;
    private readonly FrameArea[] _areas;
    private readonly bool[] _doubtful;

    private FrameSegmentation(BlockGrid grid)
    {
        _grid = grid;
        _areas = new FrameArea[grid.Blocks.Length];
        _doubtful = new bool[grid.Blocks.Length];
    }

    /// <summary>What each block shows.</summary>
    public IReadOnlyList<FrameArea> Areas => _areas;

    /// <summary>Why background and subject cannot be told apart for sure, as a sentence; none where they can.</summary>
    public string? Doubt { get; private set; }

    /// <summary>Share of the frame that could be either [1].</summary>
    public double DoubtfulShare => Enumerable.Range(0, _doubtful.Length).Where(i => _doubtful[i]).Sum(i => (double)_grid.Blocks[i].Pixels) / _grid.Blocks.Sum(block => (double)block.Pixels);

    public static FrameSegmentation OfBareFrame(BlockGrid grid)
    {
        var segmentation = new FrameSegmentation(grid);
        Array.Fill(segmentation._areas, FrameArea.Background);
        return segmentation;
    }

    public static FrameSegmentation Of(BlockGrid grid)
    {
        var (segmentation, relief) = (new FrameSegmentation(grid), new BlockRelief(grid));
        var parts = new SheetParts(grid, relief, [.. relief.Unevenness.Select(stops => stops < EvenStops)]);
        segmentation.Flood(relief, parts);
        segmentation.GrowToOutline(relief, parts);
        segmentation.Doubt = new BackgroundDoubt(grid, relief.Stops, segmentation._areas).Reason(Evenly(grid, parts));
        segmentation.TakeCorners();
        segmentation.MarkSubject(relief);
        parts.Doubtful.ForEach(i => segmentation._doubtful[i] = true);
        return segmentation;
    }

    // The background as it would be if light were allowed to change only as a panel's mostly does.
    private static FrameArea[] Evenly(BlockGrid grid, SheetParts parts)
    {
        var areas = new FrameArea[grid.Blocks.Length];
        parts.Sheet.ForEach(i => areas[i] = FrameArea.Background);
        return areas;
    }

    private void Flood(BlockRelief relief, SheetParts parts)
    {
        var passable = relief.Unevenness.Select((stops, i) => stops < SmoothStops && !relief.IsStep[i] && !parts.Textured[i]).ToArray();
        parts.Other.ForEach(i => passable[i] = false);
        parts.Sheet.ForEach(i => passable[i] = true);
        BlockRegions.From(_grid, parts.Sheet, passable, new bool[_areas.Length]).ForEach(i => _areas[i] = FrameArea.Background);
    }

    // Blocks beside an outline failed as not smooth for the outline's sake only; those that are as bright as the background next to them are
    // background, and dropping them would bias the clipped share by a percent or more.
    private void GrowToOutline(BlockRelief relief, SheetParts parts)
    {
        var other = new bool[_areas.Length];
        parts.Other.ForEach(i => other[i] = true);
        for (var pass = 0; pass < BlockRelief.Reach; pass++)
        {
            var grown = Enumerable.Range(0, _areas.Length).Where(i => _areas[i] == FrameArea.Outline && !other[i] && BlockRegions.Neighbours(_grid, i).Any(next =>
                _areas[next] == FrameArea.Background && Math.Abs(relief.Stops[i] - relief.Stops[next]) < AlikeStops
                && Math.Abs(_grid.Blocks[i].White - _grid.Blocks[next].White) < AlikeWhite)).ToList();
            grown.ForEach(i => _areas[i] = FrameArea.Background);
        }
    }

    private void TakeCorners()
    {
        var (unreached, seen) = (_areas.Select(area => area == FrameArea.Outline).ToArray(), new bool[_areas.Length]);
        foreach (var corner in new[] { 0, _grid.Columns - 1, _areas.Length - _grid.Columns, _areas.Length - 1 })
        {
            var part = BlockRegions.From(_grid, [corner], unreached, seen);
            var shape = new CornerPart(_grid, part, _areas);
            part.ForEach(i => (_areas[i], _doubtful[i]) = (shape.IsBeyondPanel ? FrameArea.Background : FrameArea.Outline, shape.IsDoubtful));
        }
    }

    // What is at least two blocks away from any background is surely subject; the rest is outline.
    private void MarkSubject(BlockRelief relief)
    {
        var (_, near) = relief.Extremes([.. _areas.Select(area => area == FrameArea.Background ? 1.0 : 0.0)], BlockRelief.Reach);
        for (var i = 0; i < _areas.Length; i++)
        {
            _areas[i] = near[i] == 0 ? FrameArea.Subject : _areas[i];
        }
    }
}
