using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class NearFieldTests
{
    // Lambertian disc on its axis against the inverse-square law, evaluated by an independent program: 0.80, 0.941, 0.990 at one, two, five diameters.
    [Theory]
    [InlineData(1, 0.80)]
    [InlineData(2, 0.941)]
    [InlineData(5, 0.990)]
    public void A_disc_falls_short_close_by(double diameters, double share) =>
        NearField.DiscFactor(Length.FromMillimeters(35), Length.FromMillimeters(70 * diameters)).Should().BeApproximately(share, 0.0005);

    // Howell's factor of a unit square to a parallel element under its corner is 0.1385 at distance 1 (from memory, textbook tables print 0.139);
    // an element under the centre of a 2 × 2 sees four of them: π·4·0.1385/4 of the inverse-square light.
    [Fact]
    public void A_square_agrees_with_the_tabled_configuration_factor() =>
        NearField.RectangleFactor(Length.FromMeters(2), Length.FromMeters(2), Length.FromMeters(1)).Should().BeApproximately(Math.PI * 0.1385, 0.001);

    [Fact]
    public void A_rectangle_agrees_with_summing_over_its_face() =>
        Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.01, 0.5], Gen.Double[0.05, 1]).Sample(
            (width, height, d) => Math.Abs(
                NearField.RectangleFactor(Length.FromMeters(width), Length.FromMeters(height), Length.FromMeters(d)) - Summed(width, height, d)) < 1e-3,
            iter: 20);

    [Fact]
    public void A_far_or_small_head_obeys_the_inverse_square_law()
    {
        NearField.DiscFactor(Length.Zero, Length.FromMeters(1)).Should().Be(1);
        NearField.DiscFactor(Length.FromMillimeters(0.1), Length.FromMeters(10)).Should().BeApproximately(1, 1e-9);
        NearField.RectangleFactor(Length.Zero, Length.Zero, Length.FromMeters(1)).Should().Be(1);
        NearField.RectangleFactor(Length.FromMillimeters(70), Length.FromMillimeters(40), Length.FromMeters(50)).Should().BeApproximately(1, 1e-5);
    }

    [Fact]
    public void A_narrow_strip_joins_the_rectangle_without_a_step()
    {
        var strip = NearField.RectangleFactor(Length.FromMeters(0.3), Length.Zero, Length.FromMeters(0.2));
        var thin = NearField.RectangleFactor(Length.FromMeters(0.3), Length.FromMeters(1e-5), Length.FromMeters(0.2));
        strip.Should().BeApproximately(thin, 1e-6);
    }

    [Fact]
    public void A_narrower_lobe_loses_more_close_by() =>
        Gen.Select(Gen.Double[0.01, 0.2], Gen.Double[0, 20]).Sample((radius, exponent) =>
        {
            var wide = NearField.DiscFactor(Length.FromMeters(radius), Length.FromMeters(0.3), exponent);
            var narrow = NearField.DiscFactor(Length.FromMeters(radius), Length.FromMeters(0.3), exponent + 1);
            return narrow < wide && narrow > 0 && wide <= 1;
        });

    [Fact]
    public void Heads_of_impossible_size_are_refused()
    {
        FluentActions.Invoking(() => NearField.DiscFactor(Length.FromMeters(-1), Length.FromMeters(1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => NearField.RectangleFactor(Length.Zero, Length.Zero, Length.Zero)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static double Summed(double width, double height, double d)
    {
        const int steps = 100;
        var sum = 0.0;
        for (var i = 0; i < steps; i++)
        {
            for (var j = 0; j < steps; j++)
            {
                var x = (((i + 0.5) / steps) - 0.5) * width;
                var y = (((j + 0.5) / steps) - 0.5) * height;
                var square = (x * x) + (y * y) + (d * d);
                sum += d * d * d * d / (square * square);
            }
        }

        return sum / (steps * steps);
    }
}
