using MathNet.Numerics.Integration;
using StudioKit.Physics.Light.Solving;

namespace StudioKit.Physics.Tests.Light;

public sealed class GaussLegendreTests
{
    // Abramowitz & Stegun 1964, table 25.4 (from memory), to the fifteen digits remembered.
    [Theory]
    [InlineData(3, new[] { 0.774596669241483 }, new[] { 0.555555555555556 })]
    [InlineData(4, new[] { 0.339981043584856, 0.861136311594053 }, new[] { 0.652145154862546, 0.347854845137454 })]
    [InlineData(5, new[] { 0.538469310105683, 0.906179845938664 }, new[] { 0.478628670499366, 0.236926885056189 })]
    [InlineData(8, new[] { 0.183434642495650, 0.525532409916329, 0.796666477413627, 0.960289856497536 }, new[] { 0.362683783378362, 0.313706645877887, 0.222381034453374, 0.101228536290376 })]
    public void Points_and_weights_are_those_of_the_published_table(int count, double[] places, double[] weights)
    {
        var upper = GaussLegendre.About(count, 1).Where(point => point.Place > 1e-9).ToArray();

        upper.Select(point => point.Place).Should().Equal(places, (ours, theirs) => Math.Abs(ours - theirs) < 1e-15 + 5e-16);
        upper.Select(point => point.Weight).Should().Equal(weights, (ours, theirs) => Math.Abs(ours - theirs) < 1e-15 + 5e-16);
    }

    /// <summary>The rule's law: n points average a power up to 2n − 1 exactly; the integral of xᵏ from −h to h is 2hᵏ⁺¹/(k + 1) for even k and nothing for odd.</summary>
    [Fact]
    public void So_many_points_sum_every_power_up_to_twice_their_number_exactly_and_not_the_next() =>
        Gen.Select(Gen.Int[1, 12], Gen.Double[0.1, 1]).Sample((count, half) =>
            Enumerable.Range(0, 2 * count).All(power => Math.Abs(Error(count, half, power)) < 1e-14) && Math.Abs(Error(count, 1, 2 * count)) > 1e-8);

    private static double Error(int count, double half, int power) =>
        GaussLegendre.About(count, half).Sum(point => point.Weight * Math.Pow(point.Place, power)) - (power % 2 == 0 ? 2 * Math.Pow(half, power + 1) / (power + 1) : 0);

    [Fact]
    public void Points_agree_with_an_independent_library_and_go_from_the_lowest_up()
    {
        for (var count = 2; count <= 20; count++)
        {
            var theirs = new GaussLegendreRule(-0.3, 0.3, count);
            var ours = GaussLegendre.About(count, 0.3);

            ours.Select(point => point.Place).Should().BeInAscendingOrder();
            ours.Select((point, i) => Math.Abs(point.Place - theirs.GetAbscissa(i)) + Math.Abs(point.Weight - theirs.GetWeight(i))).Should().OnlyContain(off => off < 1e-15, "it has tables");
        }
    }
}
