using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Tests.Ladders;

public sealed class PowerLadderTests
{
    /// <summary>Margin at full power of an invented panel: uneven, brighter left of the middle.</summary>
    private static double AtFullPower(double u, double v) => 4.2 - (4 * (((u - 0.4) * (u - 0.4)) + ((v - 0.5) * (v - 0.5))));

    [Fact]
    public void Measured_margin_agrees_with_the_map_to_a_tenth_of_a_stop()
    {
        var map = PowerLadder.Measure(Ladder(5, 4, 3, 2)).Value!;

        var margins = map.MarginsAt(FlashPower.Full);
        for (var cell = 0; cell < margins.Count; cell++)
        {
            var (u, v) = (((cell % map.Columns) + 0.5) / map.Columns, ((cell / map.Columns) + 0.5) / map.Rows);
            margins[cell].Should().BeApproximately(AtFullPower(u, v), 0.1, $"that is the truth in cell {cell}");
        }

        map.ResponseSlope.Should().BeApproximately(1, 0.05);
    }

    [Fact]
    public void Comparison_with_a_simulation_that_is_a_third_of_a_stop_too_bright_says_so()
    {
        var map = PowerLadder.Measure(Ladder(5, 4, 3)).Value!;
        var simulated = new double[20, 30];
        for (var row = 0; row < 20; row++)
        {
            for (var column = 0; column < 30; column++)
            {
                simulated[row, column] = AtFullPower((column + 0.5) / 30, (row + 0.5) / 20) + (1.0 / 3) - 2;
            }
        }

        var comparison = MarginComparison.Of(map, new FlashPower(0.25), simulated);

        comparison.MeanStops.Should().BeApproximately(-1.0 / 3, 0.05);
        comparison.SpreadStops.Should().BeLessThan(0.05);
    }

    /// <summary>The frames are made from a kit whose flash gives 0.4 stop less than the plan's: guide number 30·2^(−0.2).</summary>
    [Fact]
    public void A_ladder_against_the_kits_plan_shows_a_weaker_flash_as_a_mean_and_nothing_as_a_spread()
    {
        var (plan, truth) = (PlannedKit.Plan(), PlannedKit.Plan(guideNumber: 30 * Math.Pow(2, -0.2)));
        var rungs = new[] { 7, 6, 5 }.Select(stops =>
        {
            var power = FlashPower.FromStopsBelowFull(stops);
            var picture = PlannedKit.Camera(truth, new ShotSettings(power), seed: stops).Expose();
            return new LadderFrame(power, TestFrame.AnalyseBarePanel(picture).Value!);
        }).ToList();
        var (expected, place) = (new ExpectedLight(plan), new PlanSearch(plan, "ladder").Frame("", "", null).Value!);
        var flash = BeneathFlash.Of(plan, place, (rungs[2].Power, null), Length.FromCentimeters(10), expected)!;

        var comparison = MarginComparison.Of(PowerLadder.Measure(rungs).Value!, rungs[0].Analysis, place, flash, expected).Value!;

        comparison.MeanStops.Should().BeApproximately(-0.4, 0.05);
        comparison.SpreadStops.Should().BeLessThan(0.05);
    }

    [Fact]
    public void Cells_that_are_white_in_every_frame_are_only_bounded()
    {
        var map = PowerLadder.Measure(Ladder(2, 1, 0)).Value!;

        map.Cells[(8 * 24) + 10].Kind.Should().Be(LadderCellKind.AtMost);
        map.Caveats.Should().Contain(caveat => caveat.Contains("lower power"));
    }

    [Fact]
    public void Two_powers_are_too_few() =>
        PowerLadder.Measure(Ladder(3, 2)).Diagnostics.Should().ContainSingle(fault => fault.Code == "FLD101");

    private static List<LadderFrame> Ladder(params int[] stopsBelowFull) =>
    [
        .. stopsBelowFull.Select(stops =>
        {
            var sensor = new SensorModel(480, 320) { Margin = (u, v) => AtFullPower(u, v) - stops, Seed = stops + 1 };
            return new LadderFrame(FlashPower.FromStopsBelowFull(stops), TestFrame.AnalyseBarePanel(sensor.Expose()).Value!);
        }),
    ];
}
