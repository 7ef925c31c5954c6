using StudioKit.Field.Analysis;
using StudioKit.Field.Calibration;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Tests.Calibration;

public sealed class PlannedReadingsTests
{
    private const string Head = "name,kind,flash,power,distance,f-number,iso,reading\n";

    /// <summary>
    /// Guide number 36 m means f/36 at 1 m and ISO 100 indoors; outdoors half a stop less: N² = 1296/√2, so the meter says f/30.3, which is
    /// 2291 lx·s with C = 250 (ISO 2720: E·t = C·N²/S).
    /// </summary>
    [Theory]
    [InlineData("2291 lx·s")]
    [InlineData("EV 9.84")]
    public void A_meter_that_reads_what_the_guide_number_promises_is_not_off(string reading)
    {
        var planned = Planned(Head + $"above,flash-meter,willow,1/1,1 m,,,{reading}\n").Value!.Single();

        (planned.Measured - planned.Planned).Should().BeApproximately(0, 0.01);
    }

    [Fact]
    public void A_flash_meters_f_number_counts_at_the_rows_iso()
    {
        var planned = Planned(Head + "above,flash-meter,willow,1/4,50 cm,,200,f/45\n").Value!.Single();

        // A quarter of the power at half the distance is the same light; f/45, exactly 2^5.5, at ISO 200 is 250·2048/200 lx·s.
        planned.Measured.Should().BeApproximately(Math.Log2(250 * 2048.0 / 200), 0.01);
        planned.Planned.Should().BeApproximately(Math.Log2(2291), 0.02);
    }

    /// <summary>An 18 % card's correct exposure lies 2.97 stops under saturation (ISO 12232: 10/S against 78/S); a 90 % one 2.32 stops higher.</summary>
    [Fact]
    public void A_white_card_lies_two_and_a_third_stops_over_a_grey_one()
    {
        const string Table = "name,kind,flash,power,reflectance,reading\ngrey,card-in-frame,willow,1/16,0.18,-3 stops\nwhite,card-in-frame,willow,1/16,0.9,-1 stop\n";
        var planned = Planned(Table).Value!;

        (planned[1].Planned - planned[0].Planned).Should().BeApproximately(Math.Log2(5), 1e-9);
    }

    /// <summary>A white margin is that of the darkest place: the smallest over a fine grid on the planned frame, whose middles fall a little short of its corners.</summary>
    [Fact]
    public void A_white_margin_stands_beside_the_darkest_place_of_the_planned_frame()
    {
        var plan = PlannedKit.Plan();
        var setUp = plan.Kit.SetUps[0];
        var margins = new ExpectedLight(plan).OnSensor(setUp, PlannedKit.Framing, setUp.CameraPitches[0], isUpright: false, new ShotSettings(FlashPower.FromStopsBelowFull(5)))!
            .MarginsAt(96, 64).Cast<double>().Where(double.IsFinite).ToList();

        var planned = Planned("name,kind,power,reading\nbare,white-margin,1/32,-1 stop\n").Value!.Single().Planned;

        planned.Should().BeApproximately(margins.Min(), 0.02);
        planned.Should().BeLessThan(margins.Average() - 0.03, "the frame is not even");
    }

    [Fact]
    public void Faults_of_a_table_name_its_lines_and_the_nearest_words()
    {
        var faults = FieldReadingTable.Parse("readings.csv", "name,kind,power,reading\na,flash-metre,1/1,f/8\nb,flash-meter,some,f/8\nc,flash-meter,1/1,bright\n").Diagnostics;

        faults.Select(fault => fault.Subject).Should().Equal("readings.csv(2)", "readings.csv(3)", "readings.csv(4)");
        faults[0].Hint.Should().Contain("flash-meter");
        faults[2].Message.Should().Contain("bright");
    }

    [Fact]
    public void A_head_with_a_slip_is_told_what_was_meant() =>
        FieldReadingTable.Parse("readings.csv", "name,kind,power,reading,distanse\n").Diagnostics.Single().Hint.Should().Contain("distance");

    [Theory]
    [InlineData("a,flash-meter,sedje,1/1,,,,f/8", "sedge")]
    [InlineData("a,flash-meter,,1/1,,,,f/8", "Which flash")]
    public void A_flash_that_the_kit_lacks_is_refused_by_name(string row, string said)
    {
        var fault = Planned(Head + row + "\n").Diagnostics.Single();

        fault.ToString().Should().Contain("readings.csv(2)").And.Contain(said);
    }

    [Fact]
    public void A_framing_must_be_named_where_there_are_several()
    {
        var plan = PlannedKit.Plan(more: "1:2, 1:4");

        new PlanSearch(plan, "frame.jpg").Frame("", "", null).Diagnostics.Single().Hint.Should().Contain("reed 50 at 1:2").And.Contain("reed 50 at 1:4");
        new PlanSearch(plan, "frame.jpg").Frame("", "reed 50 at 1:3", null).Diagnostics.Single().Hint.Should().Contain("Did you mean 'reed 50 at 1:");
    }

    [Fact]
    public void The_files_focal_length_tells_the_framing_where_only_one_fits()
    {
        var search = new PlanSearch(PlannedKit.Plan(), "frame.jpg");

        search.FrameAtAnyPitch("", "", Length.FromMillimeters(50)).Value!.Framing.Should().Be(PlannedKit.Framing);
    }

    [Fact]
    public void A_pitch_must_be_named_where_there_are_several() =>
        new PlanSearch(PlannedKit.Plan(pitch: "[60°, 90°]"), "frame.jpg").Frame("", "", null).Diagnostics.Single().Hint.Should().Contain("60°, 90°");

    /// <summary>The pictures are made from a kit whose flash gives 0.4 stop less than the plan's: guide number 30·2^(−0.2).</summary>
    [Fact]
    public void Frames_of_a_weaker_flash_and_a_meter_find_out_that_it_is_the_flash()
    {
        var plan = PlannedKit.Plan();
        var truth = PlannedKit.Plan(guideNumber: 30 * Math.Pow(2, -0.2));
        var readings = new List<CalibrationReading>();
        foreach (var stops in new[] { 7.0, 6, 5 })
        {
            readings.Add(ReadingOf(plan, truth, new ShotSettings(FlashPower.FromStopsBelowFull(stops)), (int)stops).Value!);
        }

        // 30 m at full power and 1 m outdoors, 0.4 stop less, near field of a 70 mm × 40 mm head left out: 2.5·900·2^(−0.9) lx·s.
        var meter = Math.Pow(2, Math.Log2(2.5 * 900) - 0.9);
        readings.AddRange(Planned(Head + FormattableString.Invariant($"beneath,flash-meter,sedge,1/1,1 m,,,{meter:0} lx·s\n")).Value!);

        var result = KitCalibration.Solve(readings, CalibrationPrior.Of(PlannedKit.Read())).Value!;

        var flash = result.Quantities.Single(quantity => quantity.Flash == "sedge");
        flash.PriorStops.Should().BeApproximately(0.3, 1e-9, "the kit says so");
        flash.CorrectionStops.Should().BeApproximately(-0.4, 2 * flash.UncertaintyStops);
        flash.UncertaintyStops.Should().BeLessThan(0.15);
        readings.Take(3).Should().OnlyContain(reading => Math.Abs(reading.Measured - reading.Planned + 0.4) < 0.05);
    }

    [Fact]
    public void A_frame_that_is_white_all_over_gives_no_reading()
    {
        var plan = PlannedKit.Plan();

        ReadingOf(plan, plan, new ShotSettings(FlashPower.Full), 1).Diagnostics.Single().Code.Should().Be("FLD221");
    }

    [Fact]
    public void The_kits_own_uncertainties_are_the_prior()
    {
        var prior = CalibrationPrior.Of(PlannedKit.Read());

        // ± 10 % of a transmittance are log₂ 1.1 stops; the second flash has none, so half a stop stands in.
        prior.PanelTransmittance.Should().BeApproximately(Math.Log2(1.1), 1e-9);
        prior.Flashes.Should().ContainKey("sedge").And.NotContainKey("willow");
    }

    [Fact]
    public void A_corrected_reading_carries_its_corrections_and_another_hash()
    {
        var read = PlannedKit.Read();
        var correction = new KitCorrection
        {
            Kit = "Reed margin",
            Date = new DateOnly(2026, 5, 9),
            Flashes = [new FlashCorrection("sedge", new StopsCorrection(-0.4, 0.1, 30, 26.1))],
        };

        var corrected = correction.ApplyTo(read, KitCorrectionFile.Write(correction));

        corrected.ContentHash.Should().NotBe(read.ContentHash);
        corrected.Uncertainties["flashes[0].guide-number"].Amount.Should().Be(0.1);
        KitPlanner.Plan(corrected).Corrections!.Values.Single().Quantity.Should().Be("guide number of sedge");
    }

    private static FieldResult<IReadOnlyList<CalibrationReading>> Planned(string table) =>
        new PlannedReadings(PlannedKit.Plan()).Of(FieldReadingTable.Parse("readings.csv", table).Value!);

    private static FieldResult<CalibrationReading> ReadingOf(Plan plan, Plan truth, ShotSettings shot, int seed)
    {
        var picture = PlannedKit.Camera(truth, shot, seed: seed).Expose();
        var place = new PlanSearch(plan, picture.Name).Frame("", "", null).Value!;
        return FrameReading.Of(TestFrame.AnalyseBarePanel(picture).Value!, place, shot, new ExpectedLight(plan));
    }
}
