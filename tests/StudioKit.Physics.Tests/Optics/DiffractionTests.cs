using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class DiffractionTests
{
    /// <summary>Article "Airy disk", 1.22·λ/d each side, by hand: f/24 effective, 550 nm, 4.5 µm pixels; cut-off 1/(λ·N).</summary>
    [Fact]
    public void Airy_disc_at_f_24_spans_seven_pixels()
    {
        var diameter = Diffraction.AiryDiscDiameter(24);

        diameter.Should().BeApproximately(32.21e-6, 0.001 * 32.21e-6);
        (diameter / 4.5e-6).Should().BeApproximately(7.16, 0.01);
        (Diffraction.CutOffFrequency(24) / 1000).Should().BeApproximately(75.8, 0.05);
    }

    /// <summary>The first zero of the Bessel function J₁ lies at 3.8317 (standard tables): 2 × 3.8317/π = 2.4393, which 2.44 rounds.</summary>
    [Fact]
    public void Airy_disc_ends_at_the_first_zero_of_the_Bessel_function() =>
        Diffraction.AiryDiscDiameter(1, 1).Should().BeApproximately(2 * 3.8317 / Math.PI, 0.0005 * 2.44);

    /// <summary>
    /// A textbook's worked example (university physics, limits of resolution; from memory): a mirror of 2.40 m at 550 nm parts stars 2.80·10⁻⁷ rad
    /// from one another. At f/24 that is 57.6 m of focal length.
    /// </summary>
    [Fact]
    public void Two_stars_part_at_the_angle_of_a_worked_example() =>
        (Diffraction.RayleighSeparation(24) / 57.6).Should().BeApproximately(2.80e-7, 0.005e-7);

    /// <summary>Two equal Airy patterns a Rayleigh separation apart add to a saddle of 73.5 % between their peaks (textbooks of optics, from memory).</summary>
    [Fact]
    public void Between_two_points_at_Rayleighs_separation_the_light_dips_to_three_quarters()
    {
        // (2·J₁(x)/x)² with x = π·r/(λ·N).
        var apart = Math.PI * Diffraction.RayleighSeparation(16) / (Diffraction.GreenLight * 16);

        var saddle = 2 * Airy(apart / 2) / (1 + Airy(apart));

        saddle.Should().BeApproximately(0.735, 0.002);
    }

    /// <summary>Goodman (1968) ch. 6, from memory: at f/22 effective half contrast at 33.39 lp/mm, 40.9 % at 40 lp/mm; 0.5 %.</summary>
    [Fact]
    public void Contrast_at_f_22_agrees_with_the_circular_pupil()
    {
        Diffraction.ModulationTransfer(33.39e3, 22).Should().BeApproximately(0.5, 0.005 * 0.5);
        Diffraction.ModulationTransfer(40e3, 22).Should().BeApproximately(0.409, 0.005 * 0.409);
    }

    /// <summary>Independent route: the transfer function is the shared area of two discs one diameter times s apart, here summed in strips.</summary>
    [Fact]
    public void Contrast_is_the_overlap_of_two_pupils() =>
        Gen.Double[0, 1].Sample(s =>
            Math.Abs(Diffraction.ModulationTransfer(s * Diffraction.CutOffFrequency(11), 11) - OverlapOfTwoDiscs(s)) < 1e-4);

    [Fact]
    public void Contrast_is_whole_for_a_flat_field_and_none_above_the_cut_off()
    {
        Diffraction.ModulationTransfer(0, 16).Should().Be(1);
        Diffraction.ModulationTransfer(Diffraction.CutOffFrequency(16), 16).Should().Be(0);
        Diffraction.ModulationTransfer(2 * Diffraction.CutOffFrequency(16), 16).Should().Be(0);
    }

    [Theory]
    [InlineData(0, 550e-9)]
    [InlineData(double.NaN, 550e-9)]
    [InlineData(16, 0)]
    [InlineData(16, double.NaN)]
    [InlineData(16, double.PositiveInfinity)]
    public void Light_that_is_none_is_refused(double fNumber, double wavelength)
    {
        FluentActions.Invoking(() => Diffraction.AiryDiscDiameter(fNumber, wavelength)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Diffraction.CutOffFrequency(fNumber, wavelength)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Diffraction.ModulationTransfer(1000, fNumber, wavelength)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static double OverlapOfTwoDiscs(double s)
    {
        const int strips = 20_000;
        var area = 0.0;
        for (var i = 0; i < strips; i++)
        {
            // Discs of radius 1 with centres at ±s: at height y both reach from s − √(1 − y²) to √(1 − y²) − s.
            var y = -1 + ((i + 0.5) * 2 / strips);
            area += Math.Max(0, 2 * (Math.Sqrt(1 - (y * y)) - s)) * 2 / strips;
        }

        return area / Math.PI;
    }

    // J₁(x) = (1/π)·∫ cos(τ − x·sin τ) dτ from 0 to π, in strips.
    private static double Airy(double x)
    {
        var bessel = Enumerable.Range(0, 2000).Average(i =>
        {
            var angle = (i + 0.5) / 2000 * Math.PI;
            return Math.Cos(angle - (x * Math.Sin(angle)));
        });
        return Math.Pow(2 * bessel / x, 2);
    }
}
