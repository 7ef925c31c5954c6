using MathNet.Numerics;
using MathNet.Numerics.Integration;
using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class DefocusedLensTests
{
    private const double Green = Diffraction.GreenLight;

    /// <summary>
    /// Goodman, Introduction to Fourier Optics, ch. 6: the Strehl ratio is the volume under the transfer function against that without aberration. A quarter wave of defocus leaves
    /// 8/π² = 0.8106 of the peak (Rayleigh's quarter-wave rule; closed form sinc² of the wave over two), an eighth 0.9496.
    /// </summary>
    [Theory]
    [InlineData(0.25, 0.810569)]
    [InlineData(0.125, 0.949641)]
    [InlineData(0.5, 0.405285)]
    public void The_volume_under_the_transfer_of_a_defocused_lens_is_its_strehl_ratio(double waves, double strehl)
    {
        var spot = 8 * 8 * Green * waves;

        Volume(spot).Should().BeApproximately(strehl * Volume(0), 2e-5 * Volume(0));

        double Volume(double defocus) =>
            SimpsonRule.IntegrateComposite(s => s * DefocusedLens.ModulationTransfer(s * Diffraction.CutOffFrequency(8), 8, defocus), 0, 1, 2000);
    }

    /// <summary>Limit: in focus the closed form of diffraction is left (Goodman, ch. 6); Simpson's rule is good to 1e-6.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(1.2)]
    public void In_focus_diffraction_alone_is_left(double share)
    {
        var frequency = share * Diffraction.CutOffFrequency(16);

        DefocusedLens.ModulationTransfer(frequency, 16, 0).Should().BeApproximately(Diffraction.ModulationTransfer(frequency, 16), 1e-6);
    }

    /// <summary>Limit: with far more defocus than diffraction, rays alone are left, whose even disc keeps 2·J₁(πνd)/(πνd) (Goodman, ch. 6; Bessel function by MathNet).</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(3.8)]
    [InlineData(5)]
    public void Far_out_of_focus_the_rays_disc_is_left(double swing)
    {
        var spot = swing / (Math.PI * 1000);

        DefocusedLens.ModulationTransfer(1000, 2, spot).Should().BeApproximately(2 * SpecialFunctions.BesselJ(1, swing) / swing, 0.003);
    }

    /// <summary>Independent route: the phase between two pupils shifted against one another, summed over a fine net of points in both.</summary>
    [Theory]
    [InlineData(0.2, 0.7)]
    [InlineData(0.4, 0.3)]
    [InlineData(0.6, 1.1)]
    public void The_transfer_is_the_pupils_own_correlation(double s, double waves)
    {
        const int Points = 1500;
        var sum = 0.0;
        for (var i = 0; i < Points; i++)
        {
            for (var j = 0; j < Points; j++)
            {
                var (x, y) = ((2 * (i + 0.5) / Points) - 1, (2 * (j + 0.5) / Points) - 1);
                var (left, right) = (((x + s) * (x + s)) + (y * y), ((x - s) * (x - s)) + (y * y));
                sum += left < 1 && right < 1 ? Math.Cos(2 * Math.PI * waves * (left - right)) : 0;
            }
        }

        var expected = sum * 4 / (Points * (double)Points) / Math.PI;

        DefocusedLens.ModulationTransfer(s * Diffraction.CutOffFrequency(5.6), 5.6, 8 * 5.6 * Green * waves).Should().BeApproximately(expected, 1e-3);
    }

    [Fact]
    public void The_largest_spot_for_a_contrast_keeps_just_that_contrast_and_every_smaller_one_more() =>
        Gen.Select(Gen.Double[0.02, 0.95], Gen.Double[1.4, 64], Gen.Double[0.03, 0.99], Gen.Double[0, 0.999]).Sample((share, fNumber, wanted, smaller) =>
        {
            var frequency = share * Diffraction.CutOffFrequency(fNumber);
            if (DefocusedLens.LargestSpot(frequency, fNumber, wanted) is { } spot)
            {
                DefocusedLens.ModulationTransfer(frequency, fNumber, spot).Should().BeApproximately(wanted, 1e-4);
                DefocusedLens.ModulationTransfer(frequency, fNumber, spot * smaller).Should().BeGreaterThanOrEqualTo(wanted - 1e-6);
            }
            else
            {
                Diffraction.ModulationTransfer(frequency, fNumber).Should().BeLessThan(wanted + 1e-6);
            }
        }, iter: 100);

    [Fact]
    public void A_spot_of_no_size_or_a_frequency_of_none_is_refused()
    {
        var negative = () => DefocusedLens.ModulationTransfer(1000, 8, -1e-6);
        var none = () => DefocusedLens.LargestSpot(0, 8, 0.1);
        var more = () => DefocusedLens.LargestSpot(1000, 8, 1.1);

        negative.Should().Throw<ArgumentOutOfRangeException>();
        none.Should().Throw<ArgumentOutOfRangeException>();
        more.Should().Throw<ArgumentOutOfRangeException>();
    }
}
