using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class CombinedLightTests
{
    // Derived, evaluated by an independent program: a fill 2 stops under the key adds 0.322 stop.
    [Fact]
    public void A_fill_two_stops_under_adds_a_third_of_a_stop() =>
        CombinedLight.Sum(new Stops(0), new Stops(-2)).Value.Should().BeApproximately(0.322, 0.0005);

    // Derived, evaluated by an independent program: EV 10, ISO 200, 1/200 s, N_e 24: settings EV 15.814, ambient −5.814 stop, 1.75 % of the light, 2560 lx.
    [Fact]
    public void Ambient_light_far_under_the_flash_counts_little()
    {
        var level = AmbientLight.Level(new ExposureValue(10), new FNumber(24), new ShutterSpeed(1.0 / 200), new IsoSpeed(200));
        level.Value.Should().BeApproximately(-5.814, 0.0005);
        CombinedLight.ShareOf(level).Should().BeApproximately(0.0175, 0.00005);
        AmbientLight.LuminousExposure(new ExposureValue(10), new ShutterSpeed(1.0 / 200)).Should().BeApproximately(2560.0 / 200, 1e-9);
    }

    [Fact]
    public void Sum_of_equal_lights_gains_log2_of_their_number() =>
        Gen.Select(Gen.Int[1, 12], Gen.Double[-50, 50]).Sample((count, level) =>
            Math.Abs(CombinedLight.Sum([.. Enumerable.Repeat(new Stops(level), count)]).Value - level - Math.Log2(count)) < 1e-9);

    [Fact]
    public void Far_apart_levels_do_not_overflow()
    {
        CombinedLight.Sum(new Stops(5000), new Stops(-5000)).Value.Should().Be(5000);
        CombinedLight.ShareOf(new Stops(-5000)).Should().Be(0);
        CombinedLight.ShareOf(new Stops(5000)).Should().Be(1);
    }

    [Fact]
    public void No_light_at_all_is_refused() =>
        FluentActions.Invoking(() => CombinedLight.Sum()).Should().Throw<ArgumentOutOfRangeException>();
}
