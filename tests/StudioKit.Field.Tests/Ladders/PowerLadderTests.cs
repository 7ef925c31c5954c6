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

    [Fact]
    public void A_ladder_in_reversed_order_is_refused_with_the_order_that_fits()
    {
        var frames = Ladder(6, 5, 4);
        var reversed = frames.Zip(frames.Select(frame => frame.Power).Reverse(), (frame, power) => frame with { Power = power }).ToList();

        var fault = PowerLadder.Measure(reversed).Diagnostics.Single();

        fault.Message.Should().Contain("reversed");
        fault.Hint.Should().Contain("6 1/64, 5 1/32, 4 1/16");
    }

    [Fact]
    public void A_ladder_of_mixed_order_is_refused_with_the_order_that_fits()
    {
        var frames = Ladder(6, 5, 4, 3);
        var mixed = new[] { 1, 0, 2, 3 }.Select((frame, rung) => frames[frame] with { Power = frames[rung].Power }).ToList();

        var fault = PowerLadder.Measure(mixed).Diagnostics.Single();

        fault.Message.Should().Contain("do not brighten in the order");
        fault.Hint.Should().Contain("6 1/64, 5 1/32, 4 1/16, 3 1/8");
    }

    /// <summary>Frames half a stop apart, named a stop apart: a stop shows as half of one, which no tone curve does in the shadows.</summary>
    [Fact]
    public void Half_stops_taken_for_whole_ones_are_wrong_powers()
    {
        var frames = new[] { 7, 6.5, 6, 5.5 }.Select((stops, i) => Frame(stops, i) with { Power = FlashPower.FromStopsBelowFull(7 - i) }).ToList();

        var fault = PowerLadder.Measure(frames).Diagnostics.Single();

        fault.Message.Should().Contain("A stop of power shows as 0.5 stops");
        fault.Hint.Should().Contain("1/45", "the brightest frame is taken at its word, 1/16, and the darkest lies three half stops under it").And.Contain("1/16");
    }

    [Fact]
    public void Frames_of_one_power_that_are_named_as_three_are_no_ladder()
    {
        var frames = new[] { 6, 5, 4 }.Select(stops => Frame(6, 6 - stops) with { Power = FlashPower.FromStopsBelowFull(stops) }).ToList();

        var fault = PowerLadder.Measure(frames).Diagnostics.Single();

        fault.Message.Should().Contain("A stop of power shows as 0.0 stops");
        fault.Hint.Should().Contain("Was the power turned at all");
    }

    /// <summary>Nought and two stops for one each: over the whole ladder a stop is a stop, from rung to rung it is not.</summary>
    [Fact]
    public void Two_wrong_steps_that_make_up_for_each_other_are_found()
    {
        var frames = new (double Taken, int Named)[] { (7, 7), (7, 6), (5, 5) }.Select((rung, i) => Frame(rung.Taken, i) with { Power = FlashPower.FromStopsBelowFull(rung.Named) }).ToList();

        PowerLadder.Measure(frames).Diagnostics.Single().Message.Should().Contain("From 7 at 1/128 to 7 at 1/64");
    }

    [Fact]
    public void Powers_of_a_ladder_may_stand_in_one_list()
    {
        var frames = Ladder(5, 4, 3).ConvertAll(frame => frame.Analysis);

        LadderPowers.AsNamed(frames, ["1/32, 1/16,1/8"]).Value!.Select(rung => rung.Power.StopsBelowFull).Should().Equal(5, 4, 3);
        LadderPowers.AsNamed(frames, ["1/32"]).Diagnostics.Single().Message.Should().Be("3 frames but 1 power.");
    }

    /// <summary>From the brightest cell, left of the middle, to the middle of a corner cell on the right: 4·((23.5/24 − 0.4)² + (15.5/16 − 0.5)²) = 2.22 stops.</summary>
    [Fact]
    public void The_spread_of_a_map_is_that_of_the_light() =>
        PowerLadder.Measure(Ladder(5, 4, 3)).Value!.Spread!.Value.Value.Should().BeApproximately(2.22, 0.1);

    [Fact]
    public void Frames_in_any_order_whose_powers_are_their_own_are_a_ladder() =>
        PowerLadder.Measure(Ladder(3, 6, 4, 5)).IsSound.Should().BeTrue();

    /// <summary>
    /// A film-like shoulder as published: L(1 + L/W²)/(1 + L) with white at L = W (Reinhard et al. 2002, Photographic tone reproduction for digital
    /// images, eq. 4, from memory), encoded by IEC 61966-2-1. With W = 3 light a stop under clipping shows half a stop under, three stops under 1.8.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(1.5)]
    public void A_shoulder_is_learnt_from_a_ladder_and_the_margins_are_those_of_the_light(double white)
    {
        var map = PowerLadder.Measure([.. new[] { 7.5, 6.5, 5.5, 4.5, 3.5 }.Select((stops, i) => Frame(stops, i, Shoulder(white)))]).Value!;

        map.IsCurveLearnt.Should().BeTrue();
        map.Curve.IsStandard.Should().BeFalse();
        for (var stops = 0.25; stops <= 3; stops += 0.25)
        {
            var shown = -Math.Log2(Shoulder(white)(Math.Pow(2, -stops)));
            map.Curve.StopsUnder(shown).Should().BeApproximately(stops, 0.15, $"that is the light {stops} stops under clipping");
        }

        var margins = map.MarginsAt(FlashPower.Full);
        for (var cell = 0; cell < margins.Count; cell += 7)
        {
            var (u, v) = (((cell % map.Columns) + 0.5) / map.Columns, ((cell / map.Columns) + 0.5) / map.Rows);
            margins[cell].Should().BeApproximately(AtFullPower(u, v), 0.15, $"that is the truth in cell {cell}");
        }
    }

    [Fact]
    public void A_ladder_of_a_standard_camera_finds_the_standard_curve()
    {
        var map = PowerLadder.Measure(Ladder(7, 6, 5, 4)).Value!;

        (map.IsCurveLearnt, map.Curve.IsStandard).Should().Be((true, true));
        map.Caveats.Should().Contain("The ladder fits the standard tone curve.");
    }

    [Fact]
    public void A_frame_read_by_the_kept_curve_misses_what_the_light_misses()
    {
        var curve = PowerLadder.Measure([.. new[] { 7.5, 6.5, 5.5, 4.5, 3.5 }.Select((stops, i) => Frame(stops, i, Shoulder(3)))]).Value!.Curve;
        var picture = new SensorModel(480, 320) { Margin = (_, _) => -1, Shoulder = Shoulder(3) }.Expose();

        TestFrame.AnalyseBarePanel(picture).Value!.StopsMissing.Should().BeApproximately(0.51, 0.05, "that is what the standard curve makes of it");
        TestFrame.AnalyseBarePanel(picture, curve).Value!.StopsMissing.Should().BeApproximately(1, 0.1);
        TestFrame.AnalyseBarePanel(picture, curve with { Camera = "another" }).Value!.StopsMissing.Should().BeApproximately(1, 0.1, "a file that names no camera is taken for the kit's");
    }

    [Theory]
    [InlineData("panel-1-16", 1.0 / 16)]
    [InlineData("fen 1_32 bare", 1.0 / 32)]
    [InlineData("power 1/8", 1.0 / 8)]
    [InlineData("1of64", 1.0 / 64)]
    public void A_power_is_read_from_a_name_or_a_description(string name, double power) =>
        LadderPowers.Of(name)!.Value.Fraction.Should().BeApproximately(power, 1e-9);

    [Theory]
    [InlineData("IMG_0116")]
    [InlineData("1-16 or 1-32")]
    [InlineData("2026-11-16-3")]
    [InlineData("1-0")]
    [InlineData("1-99999")]
    [InlineData("")]
    public void A_name_that_tells_no_power_or_two_tells_none(string name) => LadderPowers.Of(name).Should().BeNull();

    [Fact]
    public void The_clipped_share_of_a_camera_with_a_shoulder_is_that_of_the_light_when_its_curve_is_kept()
    {
        var curve = PowerLadder.Measure([.. new[] { 7.5, 6.5, 5.5, 4.5, 3.5 }.Select((stops, i) => Frame(stops, i, Shoulder(3)))]).Value!.Curve;
        var sensor = new SensorModel(720, 480) { Margin = (u, v) => 0.5 - (4 * (((u - 0.45) * (u - 0.45)) + ((v - 0.55) * (v - 0.55)))), Shoulder = Shoulder(3) };

        TestFrame.AnalyseBarePanel(sensor.Expose(), curve).Value!.ClippedShare.Should().BeApproximately(sensor.TrueClippedShare(), 0.01);
    }

    /// <summary>Whatever is named for the frames of a sound ladder: it is measured to what the light is, or refused.</summary>
    [Fact]
    public void Any_ladder_is_measured_truly_or_refused()
    {
        var frames = Enumerable.Range(0, 8).Select(i => Frame(i, i)).ToList();
        Gen.Shuffle(new[] { 0, 1, 2, 3, 4, 5, 6, 7 }, 3, 6).Sample(
            named =>
            {
                var taken = named.Order().ToList();
                foreach (var powers in new[] { named, [.. taken] })
                {
                    var measured = PowerLadder.Measure([.. powers.Select((stops, i) => frames[taken[i]] with { Power = FlashPower.FromStopsBelowFull(stops) })]);
                    var isTrue = powers.SequenceEqual(taken);

                    // Frames that are white alike can change places without anybody being able to tell, or anything being said wrongly.
                    (measured.IsSound || !isTrue).Should().BeTrue("the ladder as it was taken is sound");
                    if (measured.Value?.DarkestAt(FlashPower.Full) is { IsLeast: false } darkest)
                    {
                        darkest.Stops.Should().BeApproximately(AtFullPower(0.98, 0.97), 0.2);
                    }
                }
            },
            iter: Hostile.DamagedText.Runs / 2);
    }

    private static Func<double, double> Shoulder(double white) => light => light * white * (1 + (light / white)) / (1 + (light * white));

    private static List<LadderFrame> Ladder(params int[] stopsBelowFull) => [.. stopsBelowFull.Select(stops => Frame(stops, stops))];

    private static LadderFrame Frame(double stops, int seed, Func<double, double>? shoulder = null)
    {
        var sensor = new SensorModel(480, 320) { Margin = (u, v) => AtFullPower(u, v) - stops, Seed = seed + 1, Shoulder = shoulder };
        return new LadderFrame(FlashPower.FromStopsBelowFull(stops), TestFrame.AnalyseBarePanel(sensor.Expose(FormattableString.Invariant($"{stops}"))).Value!);
    }
}
