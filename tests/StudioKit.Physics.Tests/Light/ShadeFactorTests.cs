using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

/// <summary>The share of an even sky that a level shade hides.</summary>
public sealed class ShadeFactorTests
{
    private static readonly Gen<(double Size, double Height, double Aside)> Any = Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.1, 2], Gen.Double[0, 3]);

    // Under the middle of a disc the catalogue of configuration factors has r²/(h² + r²): a half where it is as wide as it hangs high.
    [Theory]
    [InlineData(1, 1, 0.5)]
    [InlineData(0.6, 0.8, 0.36)]
    [InlineData(0.55, 0.8, 0.32095)]
    public void A_round_shade_overhead_hides_its_square_over_that_of_its_rim_s_distance(double radius, double height, double published) =>
        ShadeFactor.OfDisc(radius, height, 0).Should().BeApproximately(published, 5e-6);

    [Fact]
    public void A_four_sided_shade_overhead_hides_what_the_published_factor_of_a_rectangle_says() => Any.Sample(any =>
        Math.Abs(ShadeFactor.OfRectangle(any.Size, 1.3 * any.Size, any.Height, 0) - FormFactor.PointToRectangle(any.Size, 1.3 * any.Size, any.Height)) < 1e-12);

    /// <summary>An independent route: cosine law on both ends, summed over the shade piece by piece.</summary>
    [Fact]
    public void Both_agree_with_the_light_of_every_piece_of_the_shade_added_up() => Any.Sample(
        any =>
        {
            var (size, height, aside) = any;
            var (disc, square) = (0.0, 0.0);
            const int Pieces = 200;
            var piece = 2 * size / Pieces;
            for (var i = 0; i < Pieces; i++)
            {
                for (var j = 0; j < Pieces; j++)
                {
                    var (x, y) = (-size + ((i + 0.5) * piece), -size + ((j + 0.5) * piece));
                    var slant = (height * height) + Math.Pow(x + aside, 2) + (y * y);
                    var light = height * height / (Math.PI * slant * slant) * piece * piece;
                    square += light;
                    disc += (x * x) + (y * y) <= size * size ? light : 0;
                }
            }

            // The pieces at the disc's rim are cut along squares.
            return Math.Abs(ShadeFactor.OfRectangle(2 * size, 2 * size, height, aside) - square) < 3e-3 && Math.Abs(ShadeFactor.OfDisc(size, height, aside) - disc) < 6e-3;
        },
        iter: 40);

    [Fact]
    public void Moved_aside_it_hides_less_and_far_away_nothing() => Any.Sample(any =>
        ShadeFactor.OfDisc(any.Size, any.Height, any.Aside + 0.1) < ShadeFactor.OfDisc(any.Size, any.Height, any.Aside)
        && ShadeFactor.OfRectangle(any.Size, any.Size, any.Height, any.Aside + 0.1) < ShadeFactor.OfRectangle(any.Size, any.Size, any.Height, any.Aside)
        && ShadeFactor.OfDisc(any.Size, any.Height, 1e4) < 1e-6);

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(1, 0, 0)]
    [InlineData(1, 1, -0.1)]
    [InlineData(double.NaN, 1, 0)]
    public void A_shade_of_no_size_or_height_is_refused(double size, double height, double aside)
    {
        FluentActions.Invoking(() => ShadeFactor.OfDisc(size, height, aside)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ShadeFactor.OfRectangle(size, 1, height, aside)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
