using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;

namespace StudioKit.Planning.Tests.Expected;

/// <summary>ISO 2720 for a flat receptor: N²/t = E·S/C with C = 250, so Q = E·t = C·N²/S.</summary>
public sealed class MeterReadingTests
{
    [Theory]
    [InlineData(8, 100, 160)]
    [InlineData(16, 100, 640)]
    [InlineData(16, 400, 160)]
    public void An_f_number_stands_for_the_light_that_the_standard_gives_it(double aperture, double iso, double luxSeconds) =>
        MeterReading.OfAperture(new FNumber(aperture), new IsoSpeed(iso)).Should().BeApproximately(Math.Log2(luxSeconds), 1e-12);

    /// <summary>EV 0 at ISO 100 is f/1 for a second: 2.5 lx for a second.</summary>
    [Theory]
    [InlineData(0, 2.5)]
    [InlineData(5, 80)]
    public void An_exposure_value_counts_as_for_one_second(double value, double luxSeconds) =>
        MeterReading.OfExposureValue(new ExposureValue(value)).Should().BeApproximately(Math.Log2(luxSeconds), 1e-12);

    [Fact]
    public void An_f_number_at_iso_100_and_its_exposure_value_for_a_second_say_the_same() =>
        Gen.Double[0.7, 90].Sample(n => Math.Abs(
            MeterReading.OfAperture(new FNumber(n), new IsoSpeed(100)) - MeterReading.OfExposureValue(new ExposureValue(2 * Math.Log2(n)))) < 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void No_light_cannot_be_counted_in_stops(double luxSeconds) =>
        new Action(() => MeterReading.OfLuxSeconds(luxSeconds)).Should().Throw<ArgumentOutOfRangeException>();
}
