namespace StudioKit.Physics.Tests.Light.Traced;

/// <summary>Numbers from 0 to 1 that a path turns by: its first ones are Halton points under a random shift, which lie more evenly than random ones; then random ones.</summary>
/// <remarks>J. H. Halton, "On the efficiency of certain quasi-random sequences of points", Numerische Mathematik 2, 1960; shifts after R. Cranley and T. N. L. Patterson, 1976.</remarks>
internal sealed class ShiftedTurns
{
    private static readonly int[] Primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89];

    private readonly Random _random;
    private readonly double[] _shifts;
    private int _path;
    private int _turn;

    public ShiftedTurns(int seed)
    {
        _random = new Random(seed);
        _shifts = [.. Primes.Select(_ => _random.NextDouble())];
    }

    /// <summary>Begins a path.</summary>
    public void Start(int path) => (_path, _turn) = (path, 0);

    public double Next() => _turn < Primes.Length ? Shifted(_turn++) : _random.NextDouble();

    private double Shifted(int turn)
    {
        var sum = Inverse(_path + 1, Primes[turn]) + _shifts[turn];
        return sum < 1 ? sum : sum - 1;
    }

    // The digits of a number behind the point, in reverse.
    private static double Inverse(int number, int radix)
    {
        var (value, place) = (0.0, 1.0);
        for (var rest = number; rest > 0; rest /= radix)
        {
            place /= radix;
            value += rest % radix * place;
        }

        return value;
    }
}
