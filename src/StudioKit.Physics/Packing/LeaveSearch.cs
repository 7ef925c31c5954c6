namespace StudioKit.Physics.Packing;

/// <summary>Branch and bound over staying and going, dearest per gram last.</summary>
internal sealed class LeaveSearch
{
    /// <summary>Masses within a milligram count as equal [g].</summary>
    public const double GramSlack = 1e-3;

    private const double LossSlack = 1e-9;

    private readonly double[] _grams;
    private readonly double[] _own;
    private readonly int[][] _capabilitiesOf;
    private readonly double[] _capabilityLoss;
    private readonly int[] _needCount;
    private readonly int[] _missing;
    private readonly double _excess;
    private readonly int[] _order;
    private readonly List<int> _left = [];
    private (double Loss, double Grams) _best = (double.PositiveInfinity, double.PositiveInfinity);
    private int _nodesLeft;

    public LeaveSearch(IReadOnlyList<CarriedItem> items, IReadOnlyList<Capability> capabilities, double excess, int nodes)
    {
        _excess = excess;
        _nodesLeft = nodes;
        _grams = [.. items.Select(item => item.TotalMass.Grams)];
        _own = [.. items.Select(item => Guard.NonNegative(item.Loss, nameof(items)))];
        _capabilityLoss = [.. capabilities.Select(capability => Guard.NonNegative(capability.Loss, nameof(capabilities)))];
        var names = items.Select(item => item.Name).ToHashSet(StringComparer.Ordinal);
        _needCount = [.. capabilities.Select(capability => capability.Needs.Distinct(StringComparer.Ordinal).Count(names.Contains))];
        _missing = new int[capabilities.Count];
        _capabilitiesOf = [.. items.Select(item => Enumerable.Range(0, capabilities.Count).Where(i => capabilities[i].Needs.Contains(item.Name)).ToArray())];
        _order = [.. Enumerable.Range(0, items.Count).Where(item => !items[item].Essential && _grams[item] > 0)
            .OrderBy(item => Share(item) / _grams[item]).ThenBy(item => item)];
        Best = [.. _order];
    }

    public IReadOnlyList<int> Best { get; private set; }

    public bool Proven => _nodesLeft > 0;

    public LeaveSearch Run()
    {
        if (_excess <= GramSlack)
        {
            Best = [];
        }
        else if (_order.Sum(item => _grams[item]) >= _excess - GramSlack)
        {
            Decide(0, 0, 0);
        }

        return this;
    }

    private void Decide(int depth, double loss, double grams)
    {
        if (_nodesLeft <= 0 || Hopeless(depth, loss, grams))
        {
            return;
        }

        _nodesLeft--;
        if (grams >= _excess - GramSlack)
        {
            _best = (loss, grams);
            Best = [.. _left.Order()];
            return;
        }

        var item = _order[depth];
        var more = Leave(item);
        Decide(depth + 1, loss + more, grams + _grams[item]);
        TakeBack(item);
        Decide(depth + 1, loss, grams);
    }

    private bool Hopeless(int depth, double loss, double grams)
    {
        var bound = loss + Cover(depth, _excess - grams);
        return bound > _best.Loss + LossSlack
            || (bound > _best.Loss - LossSlack && Math.Max(grams, _excess) >= _best.Grams - GramSlack);
    }

    // Least that must still be lost: the missing grams covered by the cheapest things, the last of them in part.
    private double Cover(int depth, double missing)
    {
        if (missing <= GramSlack)
        {
            return 0;
        }

        var loss = 0.0;
        foreach (var (share, grams) in _order.Skip(depth).Select(item => (Share: Share(item), Grams: _grams[item])).OrderBy(thing => thing.Share / thing.Grams))
        {
            if (grams >= missing)
            {
                return loss + (share * missing / grams);
            }

            loss += share;
            missing -= grams;
        }

        return missing > GramSlack ? double.PositiveInfinity : loss;
    }

    // An item's own loss and its part of every capability that is still there.
    private double Share(int item) =>
        _own[item] + _capabilitiesOf[item].Where(i => _missing[i] == 0).Sum(i => _capabilityLoss[i] / _needCount[i]);

    private double Leave(int item)
    {
        var loss = _own[item];
        foreach (var capability in _capabilitiesOf[item])
        {
            loss += _missing[capability]++ == 0 ? _capabilityLoss[capability] : 0;
        }

        _left.Add(item);
        return loss;
    }

    private void TakeBack(int item)
    {
        foreach (var capability in _capabilitiesOf[item])
        {
            _missing[capability]--;
        }

        _left.RemoveAt(_left.Count - 1);
    }
}
