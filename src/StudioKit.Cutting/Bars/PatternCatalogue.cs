using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Lists all patterns that a plan better than the best known one may use.</summary>
/// <remarks>
/// A plan that costs less than z only uses patterns whose reduced cost is at most z − bound. Patterns with room for one more piece
/// are left out where the job may be covered more than fully: the fuller pattern does the same.
/// </remarks>
internal sealed class PatternCatalogue
{
    private readonly BarJob _job;
    private readonly PatternPrices _prices;
    private readonly bool _fullOnly;
    private readonly int _most;
    private readonly double[] _densestAfter;
    private readonly List<BarPattern> _found = [];
    private readonly int[] _counts;
    private long _nodes;

    private PatternCatalogue(BarJob job, PatternPrices prices, bool fullOnly, int most)
    {
        _job = job;
        _prices = prices;
        _fullOnly = fullOnly;
        _most = most;
        _counts = new int[job.Lengths.Length];
        _densestAfter = new double[job.Lengths.Length + 1];
        for (var i = job.Lengths.Length - 1; i >= 0; i--)
        {
            _densestAfter[i] = Math.Max(_densestAfter[i + 1], (double)prices.Piece[i] / job.Lengths[i]);
        }
    }

    private bool Overfull => _found.Count > _most || _nodes > 200L * _most;

    /// <summary>Lists them.</summary>
    /// <param name="job">The job.</param>
    /// <param name="prices">Prices of the relaxed job.</param>
    /// <param name="slack">How far above the bound the patterns' plan may cost [10⁻⁶ tick].</param>
    /// <param name="fullOnly">Whether patterns with room for one more piece are left out.</param>
    /// <param name="most">Longest list worth having.</param>
    /// <returns>All of them, or null where they are too many.</returns>
    public static List<BarPattern>? List(BarJob job, PatternPrices prices, decimal slack, bool fullOnly, int most)
    {
        var catalogue = new PatternCatalogue(job, prices, fullOnly, most);
        for (var j = 0; j < job.Stock.Length && !catalogue.Overfull; j++)
        {
            var least = ((decimal)job.Stock[j].Cost * PatternPrices.Scale) - prices.Stock[j] - slack;
            catalogue.Descend(j, 0, job.Stock[j].Capacity, 0, least);
        }

        return catalogue.Overfull ? null : catalogue._found;
    }

    private void Descend(int stock, int i, int room, long worth, decimal least)
    {
        _nodes++;
        if (Overfull || worth + (decimal)(_densestAfter[i] * room * (1 + 1e-9)) < least)
        {
            return;
        }

        if (i == _counts.Length)
        {
            if (worth >= least && room < _job.Stock[stock].Capacity && !(_fullOnly && RoomForOneMore(room)))
            {
                _found.Add(new BarPattern(stock, [.. _counts]));
            }

            return;
        }

        for (var n = Math.Min(_job.Demand[i], room / _job.Lengths[i]); n >= 0; n--)
        {
            _counts[i] = n;
            Descend(stock, i + 1, room - (n * _job.Lengths[i]), worth + (n * _prices.Piece[i]), least);
        }

        _counts[i] = 0;
    }

    private bool RoomForOneMore(int room)
    {
        for (var i = _counts.Length - 1; i >= 0 && _job.Lengths[i] <= room; i--)
        {
            if (_counts[i] < _job.Demand[i])
            {
                return true;
            }
        }

        return false;
    }
}
