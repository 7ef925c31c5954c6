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
}
