using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class SensorExposureTests
{
    // colour-hdri, dsc.py doctests, which quote ISO 12232:2006. They print seven decimals.
    [Fact]
    public void Lens_factor_and_saturation_agree_with_colour_hdri()
    {
        SensorExposure.LensFactor(0.9, 0.98, Math.PI / 18).Should().BeApproximately(0.6515748, 5e-8);

        // With their flare of 0.0015 lx·s at ISO 400.
        (0.1643937 / SensorExposure.SaturationExposure(new IsoSpeed(400))).Should().BeApproximately(0.8430446, 5e-7);
    }

    // The factor in use is the standard's own, rounded to two digits.
    [Fact]
    public void The_usual_lens_factor_is_that_of_its_parts_rounded() =>
        SensorExposure.UsualLensFactor.Should().BeApproximately(SensorExposure.LensFactor(0.9, 0.98, Math.PI / 18), 0.005);

    // ISO 12232: 41 % headroom puts 18 % at 12.7 % of saturation; 78/S against 10/S gives 2.963.
    [Fact]
    public void Mid_tone_lies_three_stops_under_clipping()
    {
        SensorExposure.MidToneUnderClipping.Should().BeApproximately(-Math.Log2(0.18 / Math.Sqrt(2)), 0.01);
        SensorExposure.MidToneUnderClipping.Should().BeApproximately(Math.Log2(78 / 10.0), 0.01);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-8)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_impossible_transmittance_is_refused(double transmittance) =>
        FluentActions.Invoking(() => SensorExposure.LensFactor(transmittance, 0.98, 0)).Should().Throw<ArgumentOutOfRangeException>();
}
