using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class ConformityTests
{
    /// <summary>
    /// JCGM 106:2012, 7.4, an oil that is to have 12.5 to 16.3 mm²/s and shows 13.6 with u = 1.8, in its own units (from memory): Φ(1.50) − Φ(−0.61) = 0.933 − 0.271 by
    /// any table of Φ, 0.66 in two digits.
    /// </summary>
    [Fact]
    public void A_level_between_two_limits_conforms_with_the_published_probability() =>
        Conformity.Probability(new Stops(13.6), new Stops(12.5), new Stops(16.3), new Stops(1.8)).Should().BeApproximately(0.66, 0.005);

    /// <summary>JCGM 106:2012, 7.3, a voltage of 5.47 V with u = 0.05 V against a limit of 5.40 V (from memory): z = 1.40, 0.92 in two digits.</summary>
    [Fact]
    public void A_level_against_one_limit_conforms_with_the_published_probability() =>
        Conformity.Probability(new Stops(5.47), new Stops(5.40), new Stops(1000), new Stops(0.05)).Should().BeApproximately(0.92, 0.005);

    /// <summary>JCGM 106:2012, table 1: 95 % takes a guard band of z = 1.64 (from memory), half of its last digit either way. Where u is a tenth of the tolerance the far limit has no say.</summary>
    [Fact]
    public void The_guard_band_of_a_sure_measurement_is_that_of_one_limit() =>
        ((1 - Conformity.AcceptedTo(new Stops(1), new Stops(0.1))!.Value.Value) / 0.1).Should().BeApproximately(1.64, 0.006);

    /// <summary>JCGM 100:2008, table G.1: 95 % lie within 1.96 σ of the mean (from memory); half a tolerance of less than that proves nothing, of more it proves the middle.</summary>
    [Theory]
    [InlineData(1.95, false)]
    [InlineData(1.97, true)]
    public void A_tolerance_narrower_than_the_measurement_decides_nothing(double deviations, bool decides) =>
        Conformity.AcceptedTo(new Stops(0.1 * deviations), new Stops(0.1)).HasValue.Should().Be(decides);

    [Theory]
    [InlineData(0.2, ConformityDecision.Within)]
    [InlineData(0.3, ConformityDecision.NotDecided)]
    [InlineData(0.37, ConformityDecision.NotDecided)]
    [InlineData(0.45, ConformityDecision.Outside)]
    public void A_straddled_limit_is_not_decided(double level, ConformityDecision decision) =>
        Conformity.Decide(Conformity.Probability(new Stops(level), new Stops(-1.0 / 3), new Stops(1.0 / 3), new Stops(0.06))).Should().Be(decision);

    [Fact]
    public void What_is_known_exactly_needs_no_guard_band() => Conformity.AcceptedTo(new Stops(0.4), default).Should().Be(new Stops(0.4));

    /// <summary>The guard band is defined by the probability, so each gives the other back.</summary>
    [Fact]
    public void At_the_edge_of_what_is_accepted_the_probability_is_what_is_asked_for() =>
        Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.02, 0.5]).Sample((tolerance, share) =>
        {
            var uncertainty = new Stops(tolerance * share);
            var accepted = Conformity.AcceptedTo(new Stops(tolerance), uncertainty)!.Value;
            Conformity.Probability(accepted, new Stops(-tolerance), new Stops(tolerance), uncertainty).Should().BeApproximately(Conformity.Proven, 1e-9);
        });

    [Fact]
    public void Limits_in_the_wrong_order_negative_amounts_and_what_is_no_probability_are_refused()
    {
        FluentActions.Invoking(() => Conformity.Probability(default, new Stops(1), default, new Stops(0.1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Conformity.AcceptedTo(new Stops(-1), default)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Conformity.AcceptedTo(default, new Stops(-1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Conformity.Decide(1.1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
