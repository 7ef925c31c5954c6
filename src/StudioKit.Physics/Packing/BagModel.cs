namespace StudioKit.Physics.Packing;

/// <summary>A pack in grams and litres, ready to be searched.</summary>
internal sealed class BagModel
{
    private const double UsualBodyKg = 70;

    // Overfull bags come after every overweight one: a zip that does not close is final.
    private const double OverfullWeight = 1000;

    private readonly PackCase _pack;
    private readonly int[] _limitOf;
    private readonly double[] _limits;
    private readonly double[] _bagLimits;

    // Filled anew by every call of Use, which runs millions of times.
    private readonly double[] _people;

    private readonly bool[] _outside;

    public BagModel(PackCase pack)
    {
        Check(pack);
        _pack = pack;
        var people = pack.Bags.Select((bag, i) => pack.Carriers.Any(person => person.Name == bag.Carrier) ? bag.Carrier! : $"\n{i}").ToList();
        var names = people.Distinct(StringComparer.Ordinal).ToList();
        _limitOf = [.. people.Select(name => names.IndexOf(name))];
        _limits = [.. names.Select(name => 1000 * pack.HighestShare * (pack.Carriers.FirstOrDefault(person => person.Name == name)?.BodyMass.Kilograms ?? UsualBodyKg))];
        _bagLimits = [.. pack.Bags.Select(bag => bag.HighestLoad?.Grams ?? double.PositiveInfinity)];
        _people = new double[_limits.Length];
        _outside = [.. pack.Items.SelectMany(item => pack.Bags.Select(bag => item.Size is { } size && !bag.Inside.Takes(size)))];
        Grams = [.. pack.Items.Select(item => item.TotalMass.Grams)];
        Empty = [.. pack.Bags.Select(bag => bag.Mass.Grams)];
        Allowed = [.. pack.Items.Select(AllowedFor)];
        Liters = [.. pack.Items.Select(item => (item.Size?.Volume.Liters ?? 0) * item.Count)];
        Usable = [.. pack.Bags.Select(bag => bag.Inside.Volume.Liters * pack.PackingFactor)];
        Lightest = (Grams.Sum() + Empty.Sum()) / Math.Min(_limits.Sum(), _bagLimits.Sum());
    }

    public double[] Grams { get; }

    public double[] Empty { get; }

    public double[] Liters { get; }

    public double[] Usable { get; }

    /// <summary>Bags that an item may go in, strapped outside included.</summary>
    public int[][] Allowed { get; }

    /// <summary>Use of the limits if mass could be shared out to the milligram, over people or over bags, whichever bears less.</summary>
    public double Lightest { get; }

    /// <summary>One gram as use of the widest limit.</summary>
    public double OneGram => 1 / Math.Max(1, _limits.Concat(_bagLimits).Where(double.IsFinite).Max());

    /// <summary>A thing longer than the bag's inside travels outside and takes no room.</summary>
    public bool Outside(int item, int bag) => _outside[(item * _pack.Bags.Count) + bag];

    /// <summary>Use of the most used limit.</summary>
    public double Use(ReadOnlySpan<double> grams, ReadOnlySpan<double> liters)
    {
        Array.Clear(_people);
        var (use, overfull) = (0.0, 0.0);
        for (var bag = 0; bag < grams.Length; bag++)
        {
            _people[_limitOf[bag]] += grams[bag];
            use = Math.Max(use, grams[bag] / _bagLimits[bag]);
            overfull = Math.Max(overfull, (liters[bag] / Usable[bag]) - 1);
        }

        for (var person = 0; person < _people.Length; person++)
        {
            use = Math.Max(use, _people[person] / _limits[person]);
        }

        return use + (OverfullWeight * overfull);
    }

    /// <summary>Whether two bags are alike in everything but their names.</summary>
    public bool Alike(int one, int other) =>
        _limitOf[one] == _limitOf[other] && _bagLimits[one].Equals(_bagLimits[other]) && _pack.Bags[one].Inside == _pack.Bags[other].Inside;

    // What goes inside some bag is not strapped outside another.
    private int[] AllowedFor(CarriedItem item)
    {
        var open = Enumerable.Range(0, _pack.Bags.Count).Where(bag => item.Bag is null || _pack.Bags[bag].Name == item.Bag).ToArray();
        var inside = open.Where(bag => item.Size is not { } size || _pack.Bags[bag].Inside.Takes(size)).ToArray();
        return inside.Length > 0 ? inside : [.. open.Where(bag => CanBeStrappedOn(item, _pack.Bags[bag]))];
    }

    // Only slim things can be strapped outside, and nothing fragile.
    private static bool CanBeStrappedOn(CarriedItem item, CarryingBag bag) => !item.Fragile && item.Size!.Middle <= bag.Inside.Middle;

    private static void Check(PackCase pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentOutOfRangeException.ThrowIfZero(pack.Bags.Count, nameof(pack));
        Guard.Between(Guard.Positive(pack.HighestShare, nameof(pack.HighestShare)), 0, BodyShare.Limit, nameof(pack.HighestShare));
        Guard.Between(Guard.Positive(pack.PackingFactor, nameof(pack.PackingFactor)), 0, 1, nameof(pack.PackingFactor));
        foreach (var item in pack.Items)
        {
            Guard.NonNegative(item.Mass.Grams, nameof(item.Mass));
            ArgumentOutOfRangeException.ThrowIfLessThan(item.Count, 1, nameof(pack));
        }

        foreach (var person in pack.Carriers)
        {
            Guard.Positive(person.BodyMass.Grams, nameof(person.BodyMass));
        }

        foreach (var bag in pack.Bags)
        {
            Guard.NonNegative(bag.Mass.Grams, nameof(bag.Mass));
            Guard.Positive(bag.HighestLoad?.Grams ?? 1, nameof(bag.HighestLoad));
        }
    }
}
