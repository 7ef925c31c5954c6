using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class WhitenessVerdictTests
{
    /// <summary>Table of the normal distribution: Φ(0.016) = 0.506, Φ(1) = 0.8413, Φ(−1.59) = 0.0559, Φ(0.53) = 0.7019, Φ(0.2) = 0.5793, Φ(−0.5) = 0.3085.</summary>
    [Theory]
    [InlineData(0.01, 0.63, Whiteness.AtTheEdge, 0.506)]
    [InlineData(0.63, 0.63, Whiteness.White, 0.8413)]
    [InlineData(0.3339, 0.63, Whiteness.White, 0.7019)]
    [InlineData(0.6, 3, Whiteness.AtTheEdge, 0.5793)]
    [InlineData(-0.315, 0.63, Whiteness.AtTheEdge, 0.3085)]
    [InlineData(-1.0017, 0.63, Whiteness.NotWhite, 0.0559)]
    [InlineData(0, 0, Whiteness.AtTheEdge, 1)]
    [InlineData(-0.001, 0, Whiteness.NotWhite, 0)]
    public void A_margin_is_white_at_the_edge_or_not(double margin, double uncertainty, Whiteness whiteness, double probability)
    {
        var verdict = WhitenessVerdict.Of(new Stops(margin), new Stops(1.0 / 3), new Stops(uncertainty));

        verdict.Whiteness.Should().Be(whiteness);
        verdict.Probability.Should().BeApproximately(probability, 5e-4);
    }

    [Fact]
    public void A_target_under_clipping_is_refused() =>
        FluentActions.Invoking(() => WhitenessVerdict.Of(default, new Stops(-1), default)).Should().Throw<ArgumentOutOfRangeException>();
}
