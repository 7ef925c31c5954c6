using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class FlashExposureTests
{
    private static readonly IsoSpeed Iso100 = new(100);

    public static TheoryData<double, double, double, double, double, string> Published()
    {
        var data = new TheoryData<double, double, double, double, double, string>();
        foreach (var row in ExposureTable.Rows("guide-numbers.csv"))
        {
            var numbers = row.Take(5).Select(ExposureTable.Number).ToArray();
            data.Add(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], row[5]);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Published))]
    public void Guide_number_over_distance_is_the_published_f_number(
        double gn, double distance, double isoRatio, double fNumber, double tolerance, string source)
    {
        // The ratio has no unit, so feet may stand for metres here.
        var found = FlashExposure.EffectiveFNumber(
            Length.FromMeters(gn), FlashPower.Full, Length.FromMeters(distance), new IsoSpeed(100 * isoRatio));
        found.Value.Should().BeApproximately(fNumber, tolerance * fNumber, source);
    }

    // GN 36 m, P 1/16, 0.25 m, C = 250: 3240 lx·s. The chain's intermediate, evaluated by an independent program.
    [Fact]
    public void Luminous_exposure_follows_guide_number_and_inverse_square() =>
        FlashExposure.LuminousExposure(Length.FromMeters(36), new FlashPower(1.0 / 16), Length.FromMeters(0.25)).Should().BeApproximately(3240, 1e-9);

    // Energy 76 J at 40 lm/W, 0.6 into 0.568 sr (53° × 37°), is 3210 cd·s and GN 35.8: independent photometric route, values from makers' notes.
    [Fact]
    public void Guide_number_36_means_the_light_that_a_76_joule_head_can_give() =>
        FlashExposure.IntensityTime(Length.FromMeters(35.8), FlashPower.Full).Should().BeApproximately(76 * 40 * 0.6 / 0.568, 15);

    [Fact]
    public void Doubling_the_distance_costs_two_stops() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.05, 5]).Sample((gn, d) =>
            Math.Abs(Math.Log2(
                FlashExposure.LuminousExposure(Length.FromMeters(gn), FlashPower.Full, Length.FromMeters(d))
                / FlashExposure.LuminousExposure(Length.FromMeters(gn), FlashPower.Full, Length.FromMeters(2 * d))) - 2) < 1e-9);

    [Fact]
    public void A_stop_of_ISO_equals_a_stop_of_power() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.01, 0.5]).Sample((gn, p) =>
        {
            var byIso = FlashExposure.ScaledGuideNumber(Length.FromMeters(gn), new FlashPower(p), new IsoSpeed(400));
            var byPower = FlashExposure.ScaledGuideNumber(Length.FromMeters(gn), new FlashPower(2 * p), new IsoSpeed(200));
            return Math.Abs(byIso.Meters - byPower.Meters) < 1e-9;
        });

    [Fact]
    public void A_flash_at_no_distance_or_without_light_is_refused()
    {
        FluentActions.Invoking(() => FlashExposure.LuminousExposure(Length.FromMeters(30), FlashPower.Full, Length.Zero))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FlashExposure.IntensityTime(Length.FromMeters(-1), FlashPower.Full))
            .Should().Throw<ArgumentOutOfRangeException>();
    }
}
