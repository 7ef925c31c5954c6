using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class PixelScaleTests
{
    /// <summary>By hand: 36 mm over 8000 pixels is 4.5 µm; at 0.8 life size 5.625 µm a pixel, so a 10 mm bar spans 1777.8 pixels.</summary>
    [Fact]
    public void A_scale_bar_spans_the_pixels_worked_by_hand()
    {
        var pitch = PixelScale.PixelPitch(36e-3, 8000);

        pitch.Should().BeApproximately(4.5e-6, 1e-15);
        PixelScale.AtSubject(pitch, 0.8).Should().BeApproximately(5.625e-6, 1e-12);
        (10e-3 / PixelScale.AtSubject(pitch, 0.8)).Should().BeApproximately(1777.8, 0.05);
    }

    [Fact]
    public void Finest_detail_is_sampling_when_the_aperture_is_wide_and_diffraction_when_it_is_small()
    {
        PixelScale.FinestDetail(4.5e-6, 2, 4).Should().BeApproximately(4.5e-6, 1e-12, "two pixels at twice life size");
        // 1.22 · 0.55 µm · 32 = 21.47 µm on the sensor.
        PixelScale.FinestDetail(4.5e-6, 2, 32).Should().BeApproximately(10.74e-6, 0.005e-6, "Rayleigh's criterion at twice life size");
    }

    [Fact]
    public void Detail_grows_finer_with_magnification_and_never_with_a_smaller_aperture() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[2, 64], Gen.Double[1.01, 3]).Sample((m, n, more) =>
            PixelScale.FinestDetail(4e-6, m * more, n) < PixelScale.FinestDetail(4e-6, m, n)
            && PixelScale.FinestDetail(4e-6, m, n * more) >= PixelScale.FinestDetail(4e-6, m, n));

    // The sides of a right triangle: 21 µm still and 72 µm of smear leave 75 µm (21² + 72² = 75²).
    [Fact]
    public void Smear_coarsens_the_finest_detail_in_quadrature() =>
        PixelScale.DetailWithSmear(21e-6, 72e-6).Should().BeApproximately(75e-6, 1e-15);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(4e-6, 0)]
    [InlineData(4e-6, double.NaN)]
    public void A_pixel_or_magnification_that_is_none_is_refused(double pitch, double m)
    {
        FluentActions.Invoking(() => PixelScale.AtSubject(pitch, m)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => PixelScale.FinestDetail(pitch, m, 16)).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void A_sensor_without_pixels_is_refused() =>
        FluentActions.Invoking(() => PixelScale.PixelPitch(36e-3, 0)).Should().Throw<ArgumentOutOfRangeException>();
}
