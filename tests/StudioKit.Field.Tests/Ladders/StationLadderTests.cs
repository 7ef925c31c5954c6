using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Stations.OneWhite;
using UnitsNet;

namespace StudioKit.Field.Tests.Ladders;

/// <summary>Power ladders of whole stations; each is photographed by a camera over a kit whose flash gives something else than the plan thinks.</summary>
public sealed class StationLadderTests
{
    private static readonly Plan Planned = PlannedKit.Plan();

    [Theory]
    [InlineData(-0.4)]
    [InlineData(0.3)]
    public void A_ladder_tells_what_the_flash_gives_within_what_it_says_of_itself(double gives)
    {
        var station = Measured(Rungs(gives, 7, 6, 5)).Value!;

        var light = Planned.Advice.Measured(station.Exposure, station.Frame)!;
        light.Gives.Value.Should().BeApproximately(gives, 2 * station.Uncertainty.Value);
        light.Present.Value.Should().BeApproximately(station.Exposure.WhiteMargin!.Value.Value + gives, 2 * station.Uncertainty.Value);
        station.Uncertainty.Value.Should().BeInRange(0.01, 0.15);
        station.OtherShape.Value.Should().BeLessThan(0.05, "it is the same studio");
    }

    /// <summary>The way round: pictures, advice, and pictures of what was set as told.</summary>
    [Fact]
    public void Stations_set_as_told_show_one_white_in_the_next_pictures()
    {
        double[] gives = [-0.55, 0.3];
        var white = CommonWhitePlanner.Of([.. gives.Select(light => Measured(Rungs(light, 7, 6, 5)).Value!)], null, CommonWhitePlanner.UsualTolerance);

        white.Before.Range.Value.Should().BeApproximately(0.85, 0.1);
        white.Stations.Should().OnlyContain(station => station.Decision == ConformityDecision.Within);
        foreach (var (station, light) in white.Stations.Zip(gives))
        {
            // A picture of what was set clips all over, so it is taken three stops under it.
            var below = station.Advice!.Promise.Lights.First(of => of.Role.IsBackground());
            var under = FlashPower.FromStopsBelowFull(below.Power.StopsBelowFull + 3);
            var frame = Analysed(light, new ShotSettings(under, below.Distance, station.Advice.Promise.Aperture, station.Advice.Promise.Iso), 9);
            (-frame.StopsMissing + 3).Should().BeApproximately(station.After!.Margin.Value, 2.5 * station.After.Uncertainty.Value);
        }
    }

    /// <summary>
    /// By hand: seen 3, 1.8 and 1 stop under clipping a stop of power apart, the middle rung says a fifth of a stop less than the others. Weights 1/(0.02 + 0.05·d)² are 34.6, 82.6 and
    /// 204.1, so the mean lies 0.0514 under the others, √(2.455/2/321.3) = 0.0618 is how far they scatter (NIST handbook, weighted mean), and 1/√321.3 = 0.0558 what they were trusted with.
    /// </summary>
    [Fact]
    public void Rungs_that_disagree_are_no_surer_than_they_scatter()
    {
        var rungs = new (double Power, double Under)[] { (6, 3), (5, 1.8), (4, 1) }.Select((rung, i) => new LadderFrame(
            FlashPower.FromStopsBelowFull(rung.Power), TooFewForACurve(TestFrame.AnalyseBarePanel(new SensorModel(480, 320) { Margin = (_, _) => -rung.Under, Seed = i }.Expose()).Value!))).ToList();

        var map = PowerLadder.Measure(rungs).Value!;

        map.IsCurveLearnt.Should().BeFalse();
        map.Cells[0].ClipPowerStops.Should().BeApproximately(-3 - 0.0514, 0.01);
        map.Cells[0].ScatterStops.Should().BeApproximately(0.0618, 0.005);
        map.Cells[0].UncertaintyStops.Should().BeApproximately(0.0558, 0.001);

        // Seen 1.4 stops under clipping on the whole, by a curve that is only assumed: its tenth of a stop counts in full.
        var darkest = map.Cells.MaxBy(cell => cell.ClipPowerStops)!;
        map.DarkestUncertainty!.Value.Value.Should().BeApproximately(double.Hypot(darkest.ScatterStops, 0.1), 1e-9);

        // Twenty-four places seen in two frames are the fewest that a tone curve is learnt from.
        static FrameAnalysis TooFewForACurve(FrameAnalysis frame) => frame with { Cells = [.. frame.Cells.Take(20)], CellColumns = 5, CellRows = 4 };
    }

    /// <summary>A curve ends at clipping by its nature: what is wrong with it counts less the nearer to clipping the darkest place was seen.</summary>
    [Fact]
    public void A_ladder_that_comes_near_to_clipping_is_surer_than_one_far_under_it() =>
        Measured(Rungs(0, 6, 5, 4, 3)).Value!.Uncertainty.Value.Should().BeLessThan(Measured(Rungs(0, 9, 8, 7)).Value!.Uncertainty.Value);

    [Fact]
    public void A_ladder_that_is_white_in_every_picture_is_refused()
    {
        var fault = Measured(Rungs(0, 2, 1, 0)).Diagnostics.Single();

        (fault.Code, fault.Subject).Should().Be(("FLD234", "fen"));
        fault.Message.Should().Contain("white in every picture");
    }

    [Fact]
    public void A_ladder_of_another_lens_is_refused_picture_by_picture()
    {
        var rungs = Rungs(0, 7, 6, 5).ConvertAll(rung => rung with { Analysis = rung.Analysis with { Settings = rung.Analysis.Settings with { FocalLength = Length.FromMillimeters(105) } } });

        var faults = new[] { "", PlannedKit.Framing }.Select(framing => Measured(rungs, framing).Diagnostics).ToList();

        faults.Should().OnlyContain(of => of.Count == 3 && of.All(fault => fault.Code == "FLD232" && fault.Message.Contains("105 mm") && fault.Message.Contains(PlannedKit.Framing)));
    }

    [Fact]
    public void A_ladder_of_another_shape_of_sensor_is_refused()
    {
        var rungs = Rungs(0, 7, 6, 5).ConvertAll(rung => rung with { Analysis = rung.Analysis with { Width = 420 } });

        Measured(rungs).Diagnostics.Should().HaveCount(3).And.OnlyContain(fault => fault.Code == "FLD233" && fault.Message.Contains("420 x 320"));
    }

    /// <summary>Five stops less light than planned is thirty-two times: no guide number is so wrong.</summary>
    [Fact]
    public void A_ladder_five_stops_from_its_plan_is_another_kits()
    {
        var fault = Measured(Rungs(-5, 3, 2, 1)).Diagnostics.Single();

        fault.Code.Should().Be("FLD235");
        fault.Message.Should().Contain("-5.0 stops");
    }

    [Fact]
    public void What_is_wrong_with_the_ladder_itself_is_told_under_its_name() =>
        Measured(Rungs(0, 7, 6)).Diagnostics.Select(fault => (fault.Code, fault.Subject)).Should().Equal(("FLD101", "fen"));

    [Fact]
    public void A_framing_that_the_kit_has_not_is_told() =>
        Measured(Rungs(0, 7, 6, 5), "reed 50 at 9:1").Diagnostics.Single().Message.Should().Contain("has no framing 'reed 50 at 9:1'");

    private static FieldResult<MeasuredStation> Measured(IReadOnlyList<LadderFrame> rungs, string framing = "") =>
        StationLadder.Of("fen", new TestFramePlan(Planned, new ExpectedLight(Planned), "", framing, null), rungs, null);

    private static List<LadderFrame> Rungs(double gives, params int[] stopsBelow) =>
        [.. stopsBelow.Select(stops => FlashPower.FromStopsBelowFull(stops)).Select(power => new LadderFrame(power, Analysed(gives, new ShotSettings(power), (int)power.StopsBelowFull)))];

    private static FrameAnalysis Analysed(double gives, ShotSettings shot, int seed) =>
        TestFrame.AnalyseBarePanel(PlannedKit.Camera(Planned, shot, gives, seed).Expose()).Value!;
}
