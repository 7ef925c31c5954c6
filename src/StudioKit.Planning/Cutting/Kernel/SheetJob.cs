using UnitsNet;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>A request of sheets in whole numbers: equal sizes merged, impossible pieces set aside.</summary>
/// <remarks>
/// Where every cut goes from edge to edge and takes the same kerf, adding one kerf to both sides of every piece and of
/// every sheet gives a job without kerf that has the same plans.
/// </remarks>
internal sealed class SheetJob : CutJob
{
    private SheetJob(SheetCutRequest request, StockPrices prices)
        : base(prices, request.Kerf, request.Trim) => Request = request;

    public SheetCutRequest Request { get; }

    /// <summary>Kinds of piece, the largest area first.</summary>
    public SheetKind[] Kinds { get; private set; } = [];

    public SheetStock[] Stock { get; private set; } = [];

    /// <summary>Pieces larger than any sheet.</summary>
    public IReadOnlyList<UncutPiece> TooLarge { get; private set; } = [];

    public static SheetJob From(SheetCutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        RefuseNone(request.Pieces.Count);
        var job = new SheetJob(request, StockPrices.From([.. request.Stock.Select(sheet => sheet.Price)]));
        var stock = request.Stock.Select(job.ToStock).Where(sheet => sheet.Available > 0).ToArray();
        var countable = request.Pieces.ToLookup(piece => CanCount(piece.Width) & CanCount(piece.Height));
        var kinds = countable[true].Select(job.ToKind)
            .GroupBy(kind => (kind.Width, kind.Height, kind.MayTurn))
            .Select(group => group.First() with { Pieces = [.. group.SelectMany(kind => kind.Pieces)] })
            .OrderByDescending(kind => kind.Area).ThenByDescending(kind => kind.Width)
            .ToLookup(kind => stock.Any(sheet => kind.Fits(sheet.Width, sheet.Height)));
        job.Kinds = [.. kinds[true]];
        job.TooLarge = [.. Named([.. countable[false].SelectMany(Each)], UncutReason.TooLarge), .. kinds[false].SelectMany(kind => Named(kind.Pieces, UncutReason.TooLarge))];
        var total = job.Kinds.Sum(kind => kind.Demand);
        job.Stock =
        [
            .. stock.Where(sheet => job.Kinds.Any(kind => kind.Fits(sheet.Width, sheet.Height)))
                .Select(sheet => sheet with { Available = Math.Min(sheet.Available, total) }),
        ];
        return job;
    }

    public static IEnumerable<UncutPiece> Named(IEnumerable<SheetPiece> pieces, UncutReason reason) => pieces
        .GroupBy(piece => (piece.Label, Tenths.RoundedUp(piece.Width).Millimeters, Tenths.RoundedUp(piece.Height).Millimeters))
        .Select(group => new UncutPiece(group.Key.Label, Length.FromMillimeters(group.Key.Item2), Length.FromMillimeters(group.Key.Item3), group.Count(), reason));

    /// <summary>The bound that needs no search: cost of enough area, and of one sheet at least [ticks].</summary>
    public long QuickBound()
    {
        if (Kinds.Length == 0)
        {
            return 0;
        }

        var area = CuttingBounds.Continuous(
            Kinds.Sum(kind => kind.Area * kind.Demand), Stock.Select(sheet => (sheet.Area, sheet.Cost, sheet.Available)));
        return Math.Max(area, Stock.Min(sheet => sheet.Cost));
    }

    private static IEnumerable<SheetPiece> Each(SheetPiece piece) => Enumerable.Repeat(piece, Wanted(piece.Count));

    private SheetKind ToKind(SheetPiece piece)
    {
        var (width, height) = (Needed(piece.Width), Needed(piece.Height));
        var turns = piece.MayTurn && width != height;
        return new SheetKind(
            turns ? Math.Max(width, height) : width,
            turns ? Math.Min(width, height) : height,
            turns,
            [.. Each(piece)]);
    }

    private SheetStock ToStock(StockSheet sheet, int row) =>
        new(row, Given(sheet.Width), Given(sheet.Height), Prices.Ticks[row], OnHand(sheet.Count) ?? int.MaxValue);
}
