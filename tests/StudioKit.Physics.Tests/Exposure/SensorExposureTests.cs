using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class SensorExposureTests
{
    // colour-hdri, dsc.py doctests, which quote ISO 12232:2006. They print seven decimals.
    [Fact]
    public void Lens_factor_and_image_plane_exposure_agree_with_colour_hdri()
    {
        var q = SensorExposure.LensFactor(0.9, 0.98, Math.PI / 18);
        q.Should().BeApproximately(0.6515748, 5e-8);
        SensorExposure.ImagePlaneExposure(4000.0 / 250, 8, q).Should().BeApproximately(0.1628937, 5e-8);
        (SensorExposure.MidToneConstant / SensorExposure.ImagePlaneExposure(4000.0 / 250, 8, q)).Should().BeApproximately(61.3897251, 5e-6);

        // With their flare of 0.0015 lx·s at ISO 400.
        (0.1643937 / SensorExposure.SaturationExposure(new IsoSpeed(400))).Should().BeApproximately(0.8430446, 5e-7);
    }

    // The same doctests: the settings' saturating luminance scaled to 4000 cd/m², 1/0.8353523 of it.
    [Fact]
    public void Saturating_luminance_agrees_with_colour_hdri()
    {
        var settings = new ExposureValue(11.9657843);
        var largest = SensorExposure.SaturatingLuminance(settings, SensorExposure.LensFactor(0.9, 0.98, Math.PI / 18)).CandelasPerSquareMeter;
        (4000 / largest).Should().BeApproximately(0.8353523, 1e-6);
    }

    // Lagarde and de Rousiers 2014: 1.2·2^EV at q = 0.65.
    [Fact]
    public void Saturating_luminance_is_1_2_times_two_to_the_EV() =>
        SensorExposure.SaturatingLuminance(new ExposureValue(0)).CandelasPerSquareMeter.Should().BeApproximately(1.2, 1e-9);

    // Photographers' derivation from ANSI: 3200 cd/m² at f/16 lights the sensor with 8.125 lx, printed as about 8.12.
    [Fact]
    public void Sunny_sixteen_lights_the_sensor_with_8_lux() =>
        SensorExposure.ImagePlaneExposure(3200, 16).Should().BeApproximately(8.12, 0.01);

    // ISO 12232: 41 % headroom puts 18 % at 12.7 % of saturation; 78/S against 10/S gives 2.963.
    [Fact]
    public void Mid_tone_lies_three_stops_under_clipping()
    {
        SensorExposure.MidToneUnderClipping.Should().BeApproximately(-Math.Log2(0.18 / Math.Sqrt(2)), 0.01);
        SensorExposure.MidToneUnderClipping.Should().BeApproximately(Math.Log2(78 / 10.0), 0.01);
    }

    // Derived from ISO 2720 and ISO 12232: a 90 % card is 0.74 stop under, perfect white 0.593 stop under, an 18 % card at 9.31/S.
    [Theory]
    [InlineData(0.9, -0.745)]
    [InlineData(1.0, -0.593)]
    [InlineData(0.18, -3.067)]
    public void Cards_lie_under_clipping_when_the_meter_is_followed(double reflectance, double stops) =>
        SensorExposure.MeteredCardLevel(reflectance).Value.Should().BeApproximately(stops, 0.002);

    [Theory]
    [InlineData(0)]
    [InlineData(-8)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_impossible_f_number_is_refused(double fNumber) =>
        FluentActions.Invoking(() => SensorExposure.ImagePlaneExposure(1, fNumber)).Should().Throw<ArgumentOutOfRangeException>();
}
