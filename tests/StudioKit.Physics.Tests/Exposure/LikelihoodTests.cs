using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class LikelihoodTests
{
    // JCGM 100:2008, table G.1: 68.27 %, 90 %, 95 % and 99 % of a normal distribution lie within 1.00, 1.645, 1.960 and 2.576 σ (from memory), to four digits.
    [Theory]
    [InlineData(1, 0.6827)]
    [InlineData(1.645, 0.90)]
    [InlineData(1.96, 0.95)]
    [InlineData(2.576, 0.99)]
    public void Shares_within_so_many_standard_deviations_are_those_of_the_published_table(double deviations, double share) =>
        Likelihood.Between(default, default, new Stops(-deviations * 0.6), new Stops(deviations * 0.6), new Stops(0.6)).Should().BeApproximately(share, 1e-4);

    [Fact]
    public void What_lies_just_at_its_limit_is_a_coin_toss() => Likelihood.Above(new Stops(0.4), new Stops(0.4), new Stops(0.7)).Should().BeApproximately(0.5, 1e-12);

    [Fact]
    public void What_is_known_exactly_is_either_over_its_limit_or_not()
    {
        Likelihood.Above(new Stops(0.1), default, default).Should().Be(1);
        Likelihood.Above(new Stops(-0.1), default, default).Should().Be(0);
        Likelihood.Above(default, default, default).Should().Be(1);
    }

    // Φ(1) = 0.8413 (same table: half of what lies outside 1 σ), so 0.5 stop over a limit at σ = 0.5.
    [Fact]
    public void A_level_over_its_limit_is_the_likelier_to_reach_it_the_further_it_lies_over()
    {
        Likelihood.Above(new Stops(0.5), default, new Stops(0.5)).Should().BeApproximately(0.8413, 1e-4);
        Likelihood.Above(new Stops(-0.5), default, new Stops(0.5)).Should().BeApproximately(0.1587, 1e-4);
    }

    [Fact]
    public void A_range_wider_than_its_room_is_never_wholly_within() =>
        Likelihood.Between(new Stops(-1), new Stops(1), new Stops(-0.1), new Stops(0.1), new Stops(0.3)).Should().Be(0);

    [Fact]
    public void A_negative_uncertainty_is_refused() =>
        FluentActions.Invoking(() => Likelihood.Above(default, default, new Stops(-1))).Should().Throw<ArgumentOutOfRangeException>();
}
