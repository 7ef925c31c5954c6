using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class FlashTimingTests
{
    // Quenched decay with t0.5 of 1/1050 s at full power, evaluated by an independent program; a typical maker's printed sequence
    // (1/1100, 1/2500, 1/5000, 1/10 000, 1/20 000 s, from memory) agrees within 15 %.
    [Theory]
    [InlineData(1, 316)]
    [InlineData(2, 1050)]
    [InlineData(4, 2530)]
    [InlineData(8, 5450)]
    [InlineData(16, 11300)]
    [InlineData(32, 22900)]
    public void Duration_shrinks_as_power_is_cut(double divisor, double reciprocal)
    {
        // Decay e^(−t/τ): t0.1 = τ·ln 10, t0.5 = τ·ln 2.
        var full = Duration.FromSeconds(Math.Log(10) / Math.Log(2) / 1050);
        var found = FlashDuration.AtPower(full, new FlashPower(1 / divisor));
        (1 / found.Seconds).Should().BeApproximately(reciprocal, 0.005 * reciprocal);
    }

    [Fact]
    public void Duration_stops_shrinking_at_the_heads_shortest_flash() =>
        FlashDuration.AtPower(Duration.FromSeconds(1.0 / 300), new FlashPower(1.0 / 512)).Should().Be(FlashDuration.UsualShortest);

    [Fact]
    public void Duration_grows_with_power_and_never_beyond_full() =>
        Gen.Select(Gen.Double[0.002, 0.99], Gen.Double[0.0005, 0.01]).Sample((p, full) =>
        {
            var less = FlashDuration.AtPower(Duration.FromSeconds(full), new FlashPower(p)).Seconds;
            var more = FlashDuration.AtPower(Duration.FromSeconds(full), new FlashPower(p * 1.01)).Seconds;
            return less <= more && more <= full;
        });

    // Four cells of 2.0 Ah at 1.2 V hold 34 560 J: 227 full flashes of 76 J at 50 %, 909 at a quarter.
    [Theory]
    [InlineData(76, 227)]
    [InlineData(19, 909)]
    public void Cells_give_the_worked_number_of_flashes(double joules, int flashes) =>
        FlashEnergy.FlashesFromCells(
            4, ElectricCharge.FromAmpereHours(2), ElectricPotential.FromVolts(1.2), Energy.FromJoules(joules)).Should().Be(flashes);

    [Fact]
    public void Less_power_recycles_sooner_and_more_often()
    {
        FlashEnergy.RecycleTime(Duration.FromSeconds(3), new FlashPower(0.25)).Seconds.Should().BeApproximately(0.75, 1e-12);
        FlashEnergy.RecycleTime(Duration.FromSeconds(3), new FlashPower(1.0 / 128)).Should().Be(FlashEnergy.ShortestRecycle);
        FlashEnergy.ShareOfCells(new FlashPower(0.25)).Should().Be(0.25);
        FlashEnergy.ShareOfCells(new FlashPower(1.0 / 128)).Should().Be(1.0 / 16, "standby drains as much as a flash at so little power");
    }

    [Fact]
    public void A_marked_sync_speed_is_within_its_own_limit()
    {
        SyncLimit.Check(ThirdStopSeries.FromMark(new ShutterSpeed(1.0 / 200)), new ShutterSpeed(1.0 / 200)).IsWithin.Should().BeTrue();
        SyncLimit.Check(new ShutterSpeed(1.0 / 60), new ShutterSpeed(1.0 / 200)).WaysOut.Should().BeEmpty();
    }

    [Fact]
    public void A_shutter_too_fast_for_sync_is_told_three_ways_out()
    {
        var check = SyncLimit.Check(new ShutterSpeed(1.0 / 800), new ShutterSpeed(1.0 / 200));

        check.IsWithin.Should().BeFalse();
        check.Over.Value.Should().BeApproximately(2, 1e-9);
        check.WaysOut.Should().Equal(
            "Set 1/200 s and stop down by 2 stops.",
            "Set 1/200 s and lower the ISO by 2 stops.",
            "Set 1/200 s and put a neutral-density filter of 2 stops before the lens.");
    }

    [Fact]
    public void Times_and_counts_of_nothing_are_refused()
    {
        FluentActions.Invoking(() => FlashDuration.AtPower(Duration.Zero, FlashPower.Full)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FlashEnergy.RecycleTime(Duration.FromSeconds(-1), FlashPower.Full)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
