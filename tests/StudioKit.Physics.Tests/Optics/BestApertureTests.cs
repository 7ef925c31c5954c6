using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class BestApertureTests
{
    private const double TableWavelength = 1e-3 / 750 / 2.44;

    private static readonly LensOptics Lens = new()
    {
        FocalLength = Length.FromMillimeters(100),
        LargestMagnification = 1,
        WidestAperture = new FNumber(2.8),
        SmallestAperture = new FNumber(32),
    };

    /// <summary>Hansma's table (page on f-stops, largeformatphotography.info): focus spread in mm against f-stop and tenths of a stop.</summary>
    /// <remarks>The table is rounded to tenths and departs from its own formula by up to 0.13 stop, hence 0.15 stop.</remarks>
    [Theory]
    [InlineData(1, 16, 6)]
    [InlineData(2, 22.627, 6)]
    [InlineData(3, 32, 2)]
    [InlineData(4, 32, 6)]
    [InlineData(5, 32, 9)]
    [InlineData(6, 45.255, 2)]
    [InlineData(7, 45.255, 4)]
    [InlineData(8, 45.255, 6)]
    [InlineData(9, 45.255, 8)]
    [InlineData(10, 64, 0)]
    public void The_sharpest_f_number_agrees_with_Hansma1996(double spread, double stop, double tenths)
    {
        var best = BestAperture.EffectiveFNumber(spread / 1000, TableWavelength);

        (2 * Math.Log2(best / stop)).Should().BeApproximately(tenths / 10, 0.15);
    }

    /// <summary>Hansma's relation by hand, half life size and 10 mm deep: 30.62 effective, 20.41 on the ring, 57.7 µm of blur; 0.2 %.</summary>
    [Fact]
    public void A_beetle_10_mm_deep_at_half_life_size_is_sharpest_near_f_20()
    {
        var best = BestAperture.EffectiveFNumber(2.5e-3, TableWavelength);

        best.Should().BeApproximately(30.62, 0.06);
        (best / 1.5).Should().BeApproximately(20.41, 0.04);
        var blur = Blur.Combined(Blur.FromOffset(0.5, best, 5e-3), Diffraction.AiryDiscDiameter(best, TableWavelength));
        (blur * 1e6).Should().BeApproximately(57.7, 0.12);
    }

    /// <summary>The same relations solved for the spread, B²·750: 0.03 mm of blur allows 0.675 mm of focus spread, 0.02 mm allows 0.30 mm.</summary>
    [Theory]
    [InlineData(0.03, 0.675, 15.9)]
    [InlineData(0.02, 0.300, 10.6)]
    public void A_wanted_blur_bounds_the_focus_spread(double blur, double spread, double best)
    {
        var sharpest = BestAperture.EffectiveFNumber(spread / 1000, TableWavelength);

        sharpest.Should().BeApproximately(best, 0.05);
        (Blur.Combined(Blur.FromOffset(1, sharpest, spread / 2000), Diffraction.AiryDiscDiameter(sharpest, TableWavelength)) * 1000)
            .Should().BeApproximately(blur, 1e-6);
    }

    [Fact]
    public void No_other_f_number_blurs_less() =>
        Gen.Select(Gen.Double[1e-5, 1e-2], Gen.Double[0.2, 5]).Sample((spread, factor) =>
        {
            var best = BestAperture.EffectiveFNumber(spread);
            return BlurAt(spread, best) <= BlurAt(spread, best * factor) * (1 + 1e-12);
        });

    [Fact]
    public void No_other_mark_on_the_ring_blurs_less() =>
        Gen.Select(Gen.Double[0.2, 1], Gen.Double[0.1, 20]).Sample((m, depth) =>
        {
            var marked = new FNumber(8);
            var stack = StackAt(m, marked);
            var bellows = stack.EffectiveFNumber.Value / 8;
            var chosen = BestAperture.Marked(stack, marked, Lens, Length.FromMillimeters(depth)).Value;
            var spread = m * m * depth / 1000;

            // The whole ring in third stops, f/2.8 to f/32.
            return Enumerable.Range(9, 22).Select(k => Math.Pow(2, k / 6.0))
                .All(mark => BlurAt(spread, chosen * bellows) <= BlurAt(spread, mark * bellows) * (1 + 1e-9));
        });

    [Fact]
    public void The_mark_found_does_not_depend_on_the_aperture_it_was_asked_at()
    {
        var depth = Length.FromMillimeters(6);

        BestAperture.Marked(StackAt(0.5, new FNumber(4)), new FNumber(4), Lens, depth)
            .Should().Be(BestAperture.Marked(StackAt(0.5, new FNumber(22)), new FNumber(22), Lens, depth));
    }

    [Fact]
    public void A_flat_subject_takes_the_widest_aperture_and_an_endless_one_the_smallest()
    {
        var stack = StackAt(0.5, new FNumber(8));

        BestAperture.Marked(stack, new FNumber(8), Lens, Length.Zero).Value.Should().BeApproximately(2.8284, 0.0001);
        BestAperture.Marked(stack, new FNumber(8), Lens, Length.FromMeters(50)).Value.Should().BeApproximately(32, 1e-9);
    }

    [Fact]
    public void Apertures_the_wrong_way_round_are_refused() =>
        FluentActions.Invoking(() => BestAperture.Marked(
                StackAt(0.5, new FNumber(8)),
                new FNumber(8),
                Lens with { WidestAperture = new FNumber(22), SmallestAperture = new FNumber(4) },
                Length.FromMillimeters(5)))
            .Should().Throw<ArgumentOutOfRangeException>();

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(-1e-3, 1)]
    [InlineData(1e-3, 0)]
    [InlineData(1e-3, double.NaN)]
    public void A_spread_or_share_that_is_none_is_refused(double spread, double share) =>
        FluentActions.Invoking(() => BestAperture.EffectiveFNumber(spread, airyShare: share)).Should().Throw<ArgumentOutOfRangeException>();

    private static double BlurAt(double spread, double n) =>
        Math.Sqrt(Math.Pow(spread / (2 * n), 2) + Math.Pow(2.44 * 550e-9 * n, 2));

    private static OpticalStackResult StackAt(double m, FNumber marked) => OpticalStack.At(
        new OpticalStackCase
        {
            Lens = Lens,
            Aperture = marked,
            SensorWidth = Length.FromMillimeters(36),
            SensorHeight = Length.FromMillimeters(24),
        },
        m);
}
