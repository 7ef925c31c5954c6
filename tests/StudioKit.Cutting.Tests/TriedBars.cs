using StudioKit.Planning.Cutting;

namespace StudioKit.Cutting.Tests;

/// <summary>Least cost of a small job by trying every set of pieces on every bar: slow and plain on purpose.</summary>
internal sealed class TriedBars
{
    private readonly BarCutRequest _request;
    private readonly double[] _lengths;
    private readonly Dictionary<string, decimal?> _known = new(StringComparer.Ordinal);

    private TriedBars(BarCutRequest request)
    {
        _request = request;
        _lengths = [.. request.Pieces.SelectMany(piece => Enumerable.Repeat(piece.Length.Millimeters, piece.Count))];
    }

    /// <summary>The least cost; null where the stock does not suffice.</summary>
    public static decimal? LeastCost(BarCutRequest request)
    {
        var tried = new TriedBars(request);
        return tried.Cost((1 << tried._lengths.Length) - 1, [.. request.Stock.Select(bar => bar.Count ?? int.MaxValue)]);
    }

    private decimal? Cost(int pieces, int[] left)
    {
        if (pieces == 0)
        {
            return 0;
        }

        var key = $"{pieces}|{string.Join(',', left)}";
        if (!_known.TryGetValue(key, out var cost))
        {
            cost = Choices(pieces, left).Min();
            _known[key] = cost;
        }

        return cost;
    }

    private IEnumerable<decimal?> Choices(int pieces, int[] left) =>
        from bar in Enumerable.Range(0, left.Length)
        where left[bar] > 0
        from part in Parts(pieces)
        where Fits(part, bar)
        select Cost(pieces & ~part, [.. left.Select((count, i) => i == bar && count < int.MaxValue ? count - 1 : count)]) + _request.Stock[bar].Price;

    /// <summary>Parts that hold the first piece, which some bar must hold.</summary>
    private static IEnumerable<int> Parts(int pieces)
    {
        var first = pieces & -pieces;
        var others = pieces & ~first;
        for (var part = others; ; part = (part - 1) & others)
        {
            yield return part | first;
            if (part == 0)
            {
                yield break;
            }
        }
    }

    /// <summary>One kerf between neighbours: n pieces, n − 1 kerfs.</summary>
    private bool Fits(int part, int bar)
    {
        var on = _lengths.Where((_, i) => (part >> i & 1) == 1).ToArray();
        return on.Sum() + ((on.Length - 1) * _request.Kerf.Millimeters) <= (_request.Stock[bar].Length - _request.Trim).Millimeters + 1e-9;
    }
}
