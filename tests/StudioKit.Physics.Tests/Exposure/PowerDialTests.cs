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

    /// <summary>
    /// Whatever its step and its ends, a dial is only asked for clicks that it has, counted from full power: the brighter one never falls short, the
    /// darker never passes, the nearer is at most half a click off.
    /// </summary>
    [Fact]
    public void A_dial_is_only_ever_asked_for_its_own_clicks() =>
        Gen.Select(Gen.Enum<PowerStep>(), Gen.Double[-9, 1], Gen.Int[0, 12], Gen.Double[0, 3]).Sample((step, target, lowest, highest) =>
        {
            var flash = Flash with
            {
                PowerStep = step,
                LowestPower = FlashPower.FromStopsBelowFull(lowest),
                HighestPower = FlashPower.FromStopsBelowFull(Math.Min(highest, lowest)),
            };
            return Enum.GetValues<PowerRounding>().All(rounding =>
            {
                var solved = PowerDial.Solve(0, target, flash, rounding);
                var clicks = solved.Mark.ClicksBelowFull;
                var off = solved.Level.Value - target;
                var click = 1.0 / step.ClicksPerStop();
                return Math.Abs(clicks - Math.Round(clicks)) < 1e-9
                    && solved.Power.StopsBelowFull <= lowest + 1e-9
                    && solved.Power.StopsBelowFull >= flash.HighestPower.StopsBelowFull - 1e-9
                    && (!solved.IsReached || (rounding switch
                    {
                        PowerRounding.Brighter => off >= -1e-8 && off < click + 1e-8,
                        PowerRounding.Darker => off <= 1e-8 && off > -click - 1e-8,
                        _ => Math.Abs(off) <= (click / 2) + 1e-8,
                    }));
            });
        });

    /// <summary>By hand: 2.04 stops under full is the most that recycling allows; 1/4 is 2 stops under and so too much, 1/5 (2 1/3 under) is not.</summary>
    [Fact]
    public void A_limit_between_two_clicks_allows_the_darker_one_only()
    {
        var solved = PowerDial.Solve(0, -2, Flash with { HighestPower = FlashPower.FromStopsBelowFull(2.04) }, PowerRounding.Nearest);

        solved.Mark.AsOneFraction.Should().Be("1/5");
        solved.Limit.Should().Be(PowerLimit.FullPower);
    }

    /// <summary>A half-stop dial that ends at the mark 1/11, which stands for 3.5 stops (1/11.3), has 1/11 and no 1/16.</summary>
    [Fact]
    public void The_lowest_mark_is_the_click_it_names() =>
        PowerDial.Solve(0, -6, Flash with { PowerStep = PowerStep.Half, LowestPower = new FlashPower(1.0 / 11) }, PowerRounding.Nearest)
            .Mark.InFullStops.Should().Be("1/16 + 1/2");

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
            return !power.IsReached || (power.Level.Value >= target - 1e-6 && power.Level.Value < target + (1.0 / 3) + 1e-6);
        });
}
