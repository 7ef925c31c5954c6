using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class EffectiveApertureTests
{
    /// <summary>A published question and answer (copy of Q and A 132240): at life size the factor is 4, two stops, 1/100 s becomes 1/25 s.</summary>
    [Fact]
    public void Effective_f_number_at_life_size_is_twice_the_marked_one()
    {
        EffectiveAperture.EffectiveFNumber(11, 1).Should().BeApproximately(22, 1e-12);
        EffectiveAperture.StopsLost(1).Should().BeApproximately(2, 1e-12);
    }

    /// <summary>Greivenkamp (2004) p. 29, N·(1 + m/p), worked by hand; tolerances half the last digit given.</summary>
    [Theory]
    [InlineData(8, 0.5, 0.7, 13.714, 1.555)]
    [InlineData(1, 0.25, 1, 1.25, 0.64)]
    [InlineData(1, 0.5, 1, 1.5, 1.17)]
    [InlineData(1, 2, 1, 3, 3.17)]
    [InlineData(1, 3, 1, 4, 4.00)]
    [InlineData(1, 5, 1, 6, 5.17)]
    public void Effective_f_number_agrees_with_Greivenkamp2004(
        double marked, double magnification, double pupilRatio, double expected, double stops)
    {
        EffectiveAperture.EffectiveFNumber(marked, magnification, pupilRatio).Should().BeApproximately(expected, 0.0005);
        EffectiveAperture.StopsLost(magnification, pupilRatio).Should().BeApproximately(stops, 0.0051);
    }

    /// <summary>alanwood.net, tele-converters: 1.4× costs 1 stop (exactly 0.97), 2× costs 2; half life size and 2× make life size.</summary>
    [Theory]
    [InlineData(1.4, 0.971)]
    [InlineData(2, 2)]
    public void A_converter_costs_its_published_stops(double factor, double stops)
    {
        var with = EffectiveAperture.EffectiveFNumberBehindConverter(8, 0, factor);

        (2 * Math.Log2(with / 8)).Should().BeApproximately(stops, 0.001);
    }

    /// <summary>k·N·(1 + m₀/p₀) by hand: 1.4 × 8 × (1 + 0.5/0.8) = 18.20, 2.372 stops from f/8.</summary>
    [Fact]
    public void A_converter_behind_a_half_life_size_lens_multiplies_its_effective_f_number()
    {
        var effective = EffectiveAperture.EffectiveFNumberBehindConverter(8, 0.5, 1.4, 0.8);

        effective.Should().BeApproximately(18.20, 0.005);
        (2 * Math.Log2(effective / 8)).Should().BeApproximately(2.372, 0.0005);
    }

    /// <summary>
    /// A lens read backwards is the same lens: its image-side cone at m is the cone that the lens the right way round has at its subject at 1/m.
    /// </summary>
    [Fact]
    public void A_reversed_lens_has_the_cone_of_the_same_lens_read_backwards() =>
        Gen.Select(Gen.Double[1.4, 32], Gen.Double[0.05, 10], Gen.Double[0.3, 3]).Sample((n, m, p) =>
        {
            var subjectSide = DepthOfField.ObjectAperture(1 / m, EffectiveAperture.EffectiveFNumber(n, 1 / m, p));
            return Math.Abs((1 / (2 * subjectSide)) - EffectiveAperture.EffectiveFNumberReversed(n, m, p)) < 1e-9 * n * (1 + m);
        });

    /// <summary>
    /// Hand arithmetic, 5.6·(1 + 2·1.5) = 22.4, with f/5.6 counted over the pupil that faces the subject when reversed. The ring of that lens,
    /// engraved for use the right way round, then reads 1.5 times as much.
    /// </summary>
    [Fact]
    public void A_reversed_lens_takes_the_reciprocal_of_its_pupil_ratio()
    {
        EffectiveAperture.EffectiveFNumber(5.6, 2, 1 / 1.5).Should().BeApproximately(22.4, 1e-12);
        EffectiveAperture.EffectiveFNumberReversed(5.6 * 1.5, 2, 1.5).Should().BeApproximately(22.4, 1e-12);
    }

    [Fact]
    public void A_reversed_symmetrical_lens_is_the_same_lens() =>
        Gen.Double[0.01, 10].Sample(m =>
            Math.Abs(EffectiveAperture.EffectiveFNumberReversed(8, m) - EffectiveAperture.EffectiveFNumber(8, m)) < 1e-12);

    [Fact]
    public void At_infinity_the_marked_f_number_holds()
    {
        EffectiveAperture.EffectiveFNumber(8, 0, 0.6).Should().Be(8);
        EffectiveAperture.StopsLost(0, 0.6).Should().Be(0);
        EffectiveAperture.EffectiveFNumberOfInternalFocus(8, 0, 1, 0.6).Should().Be(8);
    }

    [Fact]
    public void A_shorter_focal_length_at_close_focus_brightens_the_image() =>
        EffectiveAperture.EffectiveFNumberOfInternalFocus(8, 1, 0.75).Should().BeApproximately(12, 1e-12);

    [Fact]
    public void Effective_f_number_grows_with_magnification() =>
        Gen.Select(Gen.Double[0, 5], Gen.Double[0.001, 5], Gen.Double[0.3, 3]).Sample((m, more, p) =>
            EffectiveAperture.EffectiveFNumber(8, m + more, p) > EffectiveAperture.EffectiveFNumber(8, m, p));

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(8, -0.1, 1)]
    [InlineData(8, 1, 0)]
    [InlineData(double.NaN, 1, 1)]
    [InlineData(8, double.NaN, 1)]
    [InlineData(8, 1, double.NaN)]
    [InlineData(double.PositiveInfinity, 1, 1)]
    public void An_impossible_lens_is_refused(double fNumber, double magnification, double pupilRatio)
    {
        FluentActions.Invoking(() => EffectiveAperture.EffectiveFNumber(fNumber, magnification, pupilRatio))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EffectiveAperture.EffectiveFNumberReversed(fNumber, magnification, pupilRatio))
            .Should().Throw<ArgumentOutOfRangeException>();
    }
}
