namespace StudioKit.Physics.Packing;

/// <summary>Branch and bound over the bags of each item, heaviest first.</summary>
internal sealed class BagSearch
{
    private readonly BagModel _model;
    private readonly int[] _order;
    private readonly double[] _grams;
    private readonly double[] _liters;
    private readonly int[] _bagOf;
    private readonly double _slack;

    // A row of choices for each depth: the search runs through a hundred thousand nodes and must not allocate at each.
    private readonly (int Bag, double Use)[] _choices;
    private int _nodesLeft;

    public BagSearch(BagModel model, int nodes)
    {
        _model = model;
        _nodesLeft = nodes;
        _slack = model.OneGram;
        _grams = [.. model.Empty];
        _liters = new double[_grams.Length];
        _bagOf = Enumerable.Repeat(-1, model.Grams.Length).ToArray();

        // Items with no choice first, then the heaviest, so that bounds bite early; ties by place in the list keep it repeatable.
        _order = [.. Enumerable.Range(0, model.Grams.Length).Where(item => model.Allowed[item].Length > 0)
            .OrderBy(item => model.Allowed[item].Length == 1 ? 0 : 1).ThenByDescending(item => model.Grams[item]).ThenBy(item => item)];
        _choices = new (int, double)[_order.Length * _grams.Length];
        Best = [.. _bagOf];
    }

    public int[] Best { get; private set; }

    public double BestUse { get; private set; } = double.PositiveInfinity;

    public bool Proven => _nodesLeft > 0;

    public BagSearch Run()
    {
        Place(0, _model.Use(_grams, _liters));
        return this;
    }

    private bool Settled(double bound) => bound > BestUse - _slack;

    /// <param name="depth">How many things have their bag.</param>
    /// <param name="use">Use of the most used limit by them.</param>
    private void Place(int depth, double use)
    {
        if (_nodesLeft <= 0 || Settled(Math.Max(_model.Lightest, use)))
        {
            return;
        }

        _nodesLeft--;
        if (depth == _order.Length)
        {
            BestUse = use;
            Best = [.. _bagOf];
            return;
        }

        var choices = _choices.AsSpan(depth * _grams.Length, _grams.Length);
        var count = Choose(_order[depth], choices);
        for (var i = 0; i < count && !Settled(choices[i].Use); i++)
        {
            var (bag, used) = choices[i];
            var (grams, liters) = Put(_order[depth], bag);
            Place(depth + 1, used);
            TakeOut(_order[depth], bag, grams, liters);
        }
    }

    // The bag that ends up least used first, of equal ones the first; of bags alike and so far equally full only the first.
    private int Choose(int item, Span<(int Bag, double Use)> choices)
    {
        var count = 0;
        foreach (var bag in _model.Allowed[item])
        {
            if (IsNew(bag, choices[..count]))
            {
                var (grams, liters) = Put(item, bag);
                Insert((bag, _model.Use(_grams, _liters)), choices, count++);
                TakeOut(item, bag, grams, liters);
            }
        }

        return count;
    }

    private static void Insert((int Bag, double Use) choice, Span<(int Bag, double Use)> choices, int count)
    {
        var place = count;
        for (; place > 0 && choices[place - 1].Use > choice.Use; place--)
        {
            choices[place] = choices[place - 1];
        }

        choices[place] = choice;
    }

    private bool IsNew(int bag, ReadOnlySpan<(int Bag, double Use)> choices)
    {
        foreach (var (other, _) in choices)
        {
            if (SameSoFar(other, bag))
            {
                return false;
            }
        }

        return true;
    }

    private bool SameSoFar(int one, int other) =>
        _model.Alike(one, other) && _grams[one].Equals(_grams[other]) && _liters[one].Equals(_liters[other]);

    // What the bag held before is put back as it was: adding and subtracting would not come out even.
    private (double Grams, double Liters) Put(int item, int bag)
    {
        var before = (_grams[bag], _liters[bag]);
        _grams[bag] += _model.Grams[item];
        _liters[bag] += _model.Outside(item, bag) ? 0 : _model.Liters[item];
        _bagOf[item] = bag;
        return before;
    }

    private void TakeOut(int item, int bag, double grams, double liters)
    {
        (_grams[bag], _liters[bag]) = (grams, liters);
        _bagOf[item] = -1;
    }
}
