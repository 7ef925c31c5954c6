using UnitsNet;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Turns layouts into a plan with labels, places and a tree of cuts.</summary>
internal sealed class SheetPlanBuilder
{
    private readonly SheetJob _job;
    private readonly int[] _taken;

    private SheetPlanBuilder(SheetJob job)
    {
        _job = job;
        _taken = new int[job.Kinds.Length];
    }

    public static SheetCutPlan Build(SheetJob job, IEnumerable<SheetBin> bins, long lowerBound, string method) =>
        new SheetPlanBuilder(job).Build([.. bins.OrderBy(bin => job.Stock[bin.Stock].Row)], lowerBound, method);

    private SheetCutPlan Build(SheetBin[] bins, long lowerBound, string method)
    {
        var sheets = bins.Select((bin, i) => Sheet(i + 1, bin)).ToArray();
        var uncut = _job.TooLarge.Concat(Missing()).ToArray();
        var offcuts = sheets.SelectMany(sheet => sheet.Remainders).Where(WorthKeeping)
            .GroupBy(region => (region.Width.Millimeters, region.Height.Millimeters))
            .Select(group => new StockSheet("offcut", group.First().Width, group.First().Height, 0, group.Count()))
            .OrderByDescending(offcut => offcut.Width.Millimeters * offcut.Height.Millimeters)
            .ToArray();
        var value = bins.Sum(bin => _job.Stock[bin.Stock].Cost);
        return new SheetCutPlan
        {
            Sheets = sheets,
            Uncut = uncut,
            Proof = new CutProof(
                _job.Prices.Objective, value * _job.Prices.Tick, lowerBound * _job.Prices.Tick, uncut.Length == 0, method),
            Offcuts = offcuts,
            StockForNextTime = [.. offcuts, .. NotTaken(bins)],
        };
    }

    private CutSheet Sheet(int number, SheetBin bin)
    {
        var stock = _job.Stock[bin.Stock];
        var row = _job.Request.Stock[stock.Row];
        var squared = Region(bin.Layout, 0, 0, stock.Width, stock.Height);
        var finished = Finished(squared).ToArray();
        return new CutSheet(
            number,
            row.Label,
            row.Width,
            row.Height,
            row.Price,
            squared,
            [.. finished.Select(region => region.Piece).OfType<PlacedPanel>()],
            [.. finished.Where(region => region.LeftOver)])
        { Sold = row.Sold };
    }

    private static IEnumerable<SheetRegion> Finished(SheetRegion region) => region.Cut is null
        ? [region]
        : Finished(region.Cut.First).Concat(region.Cut.Second is null ? [] : Finished(region.Cut.Second));

    /// <summary>Cuts a layout free of its region, then apart.</summary>
    private SheetRegion Region(Layout? layout, int x, int y, int width, int height)
    {
        if (layout is null)
        {
            return Bare(x, y, width, height);
        }

        var spareWidth = width - layout.Width;
        var spareHeight = height - layout.Height;
        if (spareWidth == 0 && spareHeight == 0)
        {
            return Apart(layout, x, y);
        }

        // The cut that frees the larger remainder goes first, from edge to edge.
        return (long)spareWidth * height >= (long)spareHeight * width
            ? AcrossWidth(layout, null, layout.Width, x, y, width, height)
            : AcrossHeight(layout, null, layout.Height, x, y, width, height);
    }

    private SheetRegion Apart(Layout layout, int x, int y) => layout switch
    {
        PieceLayout piece => Bare(x, y, piece.Width, piece.Height) with { Piece = Panel(piece, x, y) },
        JoinedLayout { Direction: SheetCutDirection.AcrossWidth } joined =>
            AcrossWidth(joined.First, joined.Second, joined.First.Width, x, y, joined.Width, joined.Height),
        JoinedLayout joined =>
            AcrossHeight(joined.First, joined.Second, joined.First.Height, x, y, joined.Width, joined.Height),
        _ => throw new InvalidOperationException("A layout is a piece or two layouts joined."),
    };

    private SheetRegion AcrossWidth(Layout first, Layout? second, int at, int x, int y, int width, int height) =>
        Bare(x, y, width, height) with
        {
            Cut = new SheetCut(
                SheetCutDirection.AcrossWidth,
                Tenths.ToLength(x + at - _job.Kerf),
                Region(first, x, y, at, height),
                width - at > _job.Kerf ? Region(second, x + at, y, width - at, height) : null),
        };

    private SheetRegion AcrossHeight(Layout first, Layout? second, int at, int x, int y, int width, int height) =>
        Bare(x, y, width, height) with
        {
            Cut = new SheetCut(
                SheetCutDirection.AcrossHeight,
                Tenths.ToLength(y + at - _job.Kerf),
                Region(first, x, y, width, at),
                height - at > _job.Kerf ? Region(second, x, y + at, width, height - at) : null),
        };

    /// <summary>A region as it really is: one kerf smaller than in the planners' numbers.</summary>
    private SheetRegion Bare(int x, int y, int width, int height) => new(
        Tenths.ToLength(x),
        Tenths.ToLength(y),
        Tenths.ToLength(width - _job.Kerf),
        Tenths.ToLength(height - _job.Kerf),
        Cut: null,
        Piece: null);

    private PlacedPanel Panel(PieceLayout layout, int x, int y)
    {
        var piece = _job.Kinds[layout.Kind].Pieces[_taken[layout.Kind]++];
        var turned = layout.Width != Tenths.Up(piece.Width, nameof(piece)) + _job.Kerf;
        return new PlacedPanel(
            piece.Label,
            Tenths.ToLength(x),
            Tenths.ToLength(y),
            turned ? piece.Height : piece.Width,
            turned ? piece.Width : piece.Height,
            turned);
    }

    private IEnumerable<UncutPiece> Missing() => _job.Kinds
        .SelectMany((kind, i) => SheetJob.Named(kind.Pieces.Skip(_taken[i]), UncutReason.NotEnoughStock));

    private bool WorthKeeping(SheetRegion region) =>
        region.Width >= _job.Request.ShortestKeptSide && region.Height >= _job.Request.ShortestKeptSide;

    private IEnumerable<StockSheet> NotTaken(SheetBin[] bins)
    {
        var taken = bins.ToLookup(bin => _job.Stock[bin.Stock].Row);
        return _job.Request.Stock
            .Select((stock, row) => stock with { Count = stock.Count - taken[row].Count() })
            .Where(stock => stock.Count > 0);
    }
}
