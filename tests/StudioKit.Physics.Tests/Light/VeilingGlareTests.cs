using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

public sealed class VeilingGlareTests
{
    /// <summary>Derived from g = V·A·2ᵏ and log₂(1 + g/tone) by an independent program, printed to three digits; V = 2 %, full field.</summary>
    [Theory]
    [InlineData(0, 0.020, 0.21)]
    [InlineData(1, 0.040, 0.40)]
    [InlineData(2, 0.080, 0.70)]
    [InlineData(3, 0.160, 1.18)]
    public void Mid_grey_rises_with_every_stop_of_margin(double margin, double level, double lift)
    {
        var glare = VeilingGlare.Level(0.02, 1, new Stops(margin));

        glare.Should().BeApproximately(level, 1e-12);
        VeilingGlare.ShadowLift(0.127, glare).Value.Should().BeApproximately(lift, 0.005);
    }

    /// <summary>Same program: at one stop of margin black lies 4.64 stops under clipping and a tone of 0.01 rises by 2.32.</summary>
    [Fact]
    public void A_dark_tone_is_lifted_more_than_a_light_one()
    {
        Math.Log2(VeilingGlare.Level(0.02, 1, new Stops(1))).Should().BeApproximately(-4.64, 0.005);
        VeilingGlare.ShadowLift(0.01, 0.04).Value.Should().BeApproximately(2.32, 0.005);
        VeilingGlare.ShadowLift(0.127, 0.04).Value.Should().BeApproximately(0.395, 0.0005);
    }

    [Fact]
    public void At_the_largest_margin_the_lift_is_just_the_limit() =>
        Gen.Double[0.001, 0.2].Select(Gen.Double[0.05, 1], Gen.Double[0.01, 0.5], Gen.Double[0.05, 3]).Sample((index, area, tone, limit) =>
        {
            var margin = VeilingGlare.LargestMargin(index, area, tone, new Stops(limit));
            return Math.Abs(VeilingGlare.ShadowLift(tone, VeilingGlare.Level(index, area, margin)).Value - limit) < 1e-9;
        });

    [Fact]
    public void Without_glare_the_margin_is_as_good_as_unbounded() =>
        VeilingGlare.LargestMargin(0, 1, 0.127, new Stops(0.5)).Value.Should().Be(30);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void An_impossible_glare_index_is_refused(double index)
    {
        var level = () => VeilingGlare.Level(index, 1, default);

        level.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("glareIndex");
    }
}
