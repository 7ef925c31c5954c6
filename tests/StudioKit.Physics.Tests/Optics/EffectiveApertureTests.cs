using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class EffectiveApertureTests
{
    /// <summary>A published question and answer (copy of Q and A 132240): at life size the factor is 4, two stops, 1/100 s becomes 1/25 s.</summary>
    [Fact]
    public void Effective_f_number_at_life_size_is_twice_the_marked_one() =>
        EffectiveAperture.EffectiveFNumber(11, 1).Should().BeApproximately(22, 1e-12);

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
        var effective = EffectiveAperture.EffectiveFNumber(marked, magnification, pupilRatio);

        effective.Should().BeApproximately(expected, 0.0005);
        (2 * Math.Log2(effective / marked)).Should().BeApproximately(stops, 0.0051);
    }

    /// <summary>Hand arithmetic, 5.6·(1 + 2·1.5) = 22.4: reversed, a lens of pupil ratio 1.5 turns its other pupil to the subject.</summary>
    [Fact]
    public void A_reversed_lens_takes_the_reciprocal_of_its_pupil_ratio() =>
        EffectiveAperture.EffectiveFNumber(5.6, 2, 1 / 1.5).Should().BeApproximately(22.4, 1e-12);

    [Fact]
    public void At_infinity_the_marked_f_number_holds() => EffectiveAperture.EffectiveFNumber(8, 0, 0.6).Should().Be(8);

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
    public void An_impossible_lens_is_refused(double fNumber, double magnification, double pupilRatio) =>
        FluentActions.Invoking(() => EffectiveAperture.EffectiveFNumber(fNumber, magnification, pupilRatio))
            .Should().Throw<ArgumentOutOfRangeException>();
}
