using MathNet.Numerics.Distributions;
using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class NormalDistributionTests
{
    // Abramowitz & Stegun 1964, table 26.1 (from memory), to the digits remembered.
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.841344746068543)]
    [InlineData(1.96, 0.975002104851780)]
    [InlineData(2, 0.977249868051821)]
    [InlineData(3, 0.998650101968370)]
    public void Probabilities_are_those_of_the_published_table(double limit, double below) =>
        NormalDistribution.Below(limit).Should().BeApproximately(below, 1e-15);

    /// <summary>Table 26.2 (from memory): 2.866 515 719·10⁻⁷ lies beyond five standard deviations.</summary>
    [Fact]
    public void Far_out_the_probability_keeps_its_digits() => (NormalDistribution.Below(-5) / 2.866515719e-7).Should().BeApproximately(1, 1e-9);

    [Fact]
    public void What_lies_on_either_side_of_a_limit_is_all_there_is() =>
        Gen.Double[-40, 40].Sample(limit => Math.Abs(NormalDistribution.Below(limit) + NormalDistribution.Below(-limit) - 1) < 1e-15);

    [Fact]
    public void Probabilities_agree_with_an_independent_library_even_where_series_and_fraction_meet() =>
        Gen.OneOf(Gen.Double[-9, 9], Gen.Double[-4.001, -3.999], Gen.Double[3.999, 4.001])
            .Sample(limit => Math.Abs(NormalDistribution.Below(limit) - Normal.CDF(0, 1, limit)) < 1e-14);

    [Theory]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(double.NegativeInfinity, 0)]
    [InlineData(double.NaN, double.NaN)]
    public void A_limit_beyond_all_numbers_has_its_limiting_probability(double limit, double below) => NormalDistribution.Below(limit).Should().Be(below);
}
