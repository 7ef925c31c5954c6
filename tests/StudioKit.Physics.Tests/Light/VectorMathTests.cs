using System.Numerics;
using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

public class VectorMathTests
{
    /// <summary>The joined order of eight sums is written out here number by number: what a processor with vectors of any length must give, to the last bit.</summary>
    [Fact]
    public void An_inner_product_is_rounded_alike_however_many_numbers_a_vector_holds() =>
        Gen.Select(Gen.Double[-1e3, 1e3].Array[0, 70], Gen.Double[1e-6, 1e6]).Sample((row, scale) =>
        {
            var left = new double[VectorMath.PaddedRow(row.Length)];
            row.CopyTo(left, 0);
            double[] right = [.. left.Select((value, i) => scale / (i + 3))];
            double Sum(int place) => Enumerable.Range(0, left.Length / 8).Aggregate(0.0, (sum, block) => sum + (left[(8 * block) + place] * right[(8 * block) + place]));
            double Pair(int place) => Sum(place) + Sum(place + 4);

            VectorMath.Dot(left, right).Should().Be(Pair(0) + Pair(1) + (Pair(2) + Pair(3)));
        });

    [Fact]
    public void A_row_is_as_long_on_every_processor() =>
        new[] { 0, 1, 8, 9, 577 }.Select(VectorMath.PaddedRow).Should().Equal(0, 8, 8, 16, 584);

    /// <summary>Held to the C library's logarithm, which is off by one unit in the last place at most (the GNU C library's manual, "Known Maximum Errors in Math Functions").</summary>
    [Fact]
    public void A_logarithm_is_right_to_a_few_units_in_the_last_place() =>
        Gen.OneOf(Gen.Double[1e-9, 1], Gen.Double[0.9, 1.1], Gen.Double[-290, 290].Select(power => Math.Pow(10, power)))
            .Sample(x => Units(Log(x), Math.Log(x)) <= 4, iter: 20_000);

    /// <summary>Held to the C library's exponential, see above.</summary>
    [Fact]
    public void An_exponential_is_right_to_a_few_units_in_the_last_place() =>
        Gen.OneOf(Gen.Double[-707, 709], Gen.Double[-1, 1]).Sample(y => Units(Exp(y), Math.Exp(y)) <= 4, iter: 20_000);

    /// <summary>Held to the C library's arctangent, see above; the angle beyond 45° is a difference, which doubles the error.</summary>
    [Fact]
    public void An_arctangent_of_one_number_is_right_to_a_few_units_in_the_last_place() =>
        Gen.OneOf(Gen.Double[-1, 1], Gen.Double[-1e6, 1e6]).Where(x => x != 0).Sample(x => Units(VectorMath.Atan(x), Math.Atan(x)) <= 4, iter: 20_000);

    /// <summary>The order of sums and products is written out here number by number, each rounded by itself: what any processor must give, to the last bit.</summary>
    [Fact]
    public void Logarithms_and_exponentials_are_rounded_alike_on_every_processor() =>
        Gen.Select(Gen.Double[1e-9, 1], Gen.Double[-700, 0]).Sample((x, y) => Log(x) == LogByHand(x) && Exp(y) == ExpByHand(y), iter: 20_000);

    [Fact]
    public void Nothing_is_left_of_an_exponential_too_small_for_any_light() =>
        new[] { -708.0, -1e4, -1e300 }.Select(Exp).Should().OnlyContain(value => value == 0);

    [Fact]
    public void One_has_no_logarithm_and_nothing_is_the_exponent_of_one() => (Log(1), Exp(0)).Should().Be((0, 1));

    private static double LogByHand(double x)
    {
        var (m, power) = (x, 0);
        for (; m < Math.Sqrt(0.5); power--)
        {
            m *= 2;
        }

        var t = (m - 1) / (m + 1);
        var s = t * t;
        double[] terms = [.. Enumerable.Range(1, 10).Select(k => 2.0 / ((2 * k) + 1))];
        var series = s * (Horner(s * s, terms, first: 0) + (s * Horner(s * s, terms, first: 1)));
        var low = power * 1.90821492927058770002e-10;
        return (power * 0.693147180369123816490) + (low + (t * series) + (t + t));
    }

    private static double ExpByHand(double y)
    {
        var power = Math.Floor((y * (1 / (0.693147180369123816490 + 1.90821492927058770002e-10))) + 0.5);
        var r = y - (power * 0.693147180369123816490);
        r -= power * 1.90821492927058770002e-10;
        double[] terms = [.. Enumerable.Range(2, 12).Select(k => 1 / Enumerable.Range(1, k).Aggregate(1.0, (product, factor) => product * factor))];
        var square = r * r;
        return Math.ScaleB((Horner(square, terms, first: 0) * square) + (Horner(square, terms, first: 1) * square * r) + r + 1, (int)power);
    }

    // Every other term, from the highest down.
    private static double Horner(double x, double[] terms, int first)
    {
        var sum = 0.0;
        for (var k = terms.Length - 2 + first; k >= 0; k -= 2)
        {
            sum *= x;
            sum += terms[k];
        }

        return sum;
    }

    private static double Log(double x) => VectorMath.Log(x);

    private static double Exp(double y) => VectorMath.Exp(new Vector<double>(y))[0];

    // How many units in the last place of the right one two numbers are apart.
    private static double Units(double found, double right) => Math.Abs(found - right) / (Math.BitIncrement(Math.Abs(right)) - Math.Abs(right));
}
