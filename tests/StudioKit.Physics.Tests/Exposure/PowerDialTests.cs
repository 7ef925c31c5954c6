using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class PowerDialTests
{
    private static readonly FlashCase Flash = new() { Name = "flash", GuideNumber = Length.FromMeters(20), Distance = Length.FromMeters(1) };

    /// <summary>By hand, in thirds of a stop below full power: 0.9, 1.5 and 2.1 lie between clicks.</summary>
    [Theory]
    [InlineData(0.9, 0, 1, 1)]
    [InlineData(1.4, 1, 1, 2)]
    [InlineData(2.1, 2, 2, 3)]
    public void A_power_between_two_clicks_goes_up_down_or_to_the_nearer_as_asked(double thirds, int brighter, int nearest, int darker)
    {
        double Clicks(PowerRounding rounding) => 3 * PowerDial.Solve(0, -thirds / 3, Flash, rounding).Power.StopsBelowFull;

        Clicks(PowerRounding.Brighter).Should().BeApproximately(brighter, 1e-9, "too little light fails, so the brighter click is taken, not the nearer");
        Clicks(PowerRounding.Nearest).Should().BeApproximately(nearest, 1e-9);
        Clicks(PowerRounding.Darker).Should().BeApproximately(darker, 1e-9, "too much light shows, so the darker click is taken, not the nearer");
    }

    /// <summary>A panel a little under its target is grey; the click above it is asked for, however near the one below.</summary>
    [Fact]
    public void The_flash_below_never_falls_short_of_its_white_margin() =>
        Gen.Double[-2, 1].Sample(target =>
        {
            var panel = new WhiteMarginCase
            {
                Flash = Flash,
                Camera = new CameraCase { Aperture = new FNumber(8), Iso = new IsoSpeed(100) },
                Transmittance = 0.5,
            };
            var power = WhiteMargin.PowerFor(panel, new Stops(target));
            return power.BindingLimit is not null || (power.Level.Value >= target - 1e-6 && power.Level.Value < target + (1.0 / 3) + 1e-6);
        });
}
