using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Field.Tests.Hostile;

namespace StudioKit.Field.Tests.Calibration;

public sealed class CalibrationHistoryTests
{
    private static readonly CalibrationPrior Prior = new();
    private static readonly DateOnly First = new(2026, 5, 9);

    [Fact]
    public void A_flash_that_loses_a_third_of_a_stop_in_a_summer_drifts_and_the_sheet_does_not()
    {
        var history = CalibrationHistory.Of(Outings(6, flash: -0.4, noise: 0.02, new Random(3)), Prior);

        var flash = Of(history, DriftingKind.FlashLight);
        flash.Stops.Should().BeApproximately(-0.4, 0.1);
        flash.IsSignificant.Should().BeTrue();
        Of(history, DriftingKind.PanelTransmittance).IsSignificant.Should().BeFalse();
        Of(history, DriftingKind.CameraClipPoint).IsSignificant.Should().BeFalse();
        Of(history, DriftingKind.WhiteMargin).Stops.Should().BeApproximately(-0.4, 0.1, "the card's margin goes with the flash");
    }

    /// <summary>
    /// Of 400 histories the 95 % interval must hold the true drift in 380 ± 4.5·4.4 (binomial deviation; at 4.5 a sound interval fails once in
    /// 100,000). What an outing does not tell apart it shares with the others of its history, and so not with the drift.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    public void The_true_drift_lies_inside_the_interval_as_often_as_stated(double drift)
    {
        var random = new Random(20260509);
        var inside = Enumerable.Range(0, 400).Count(_ =>
        {
            var flash = Of(CalibrationHistory.Of(Outings(5, drift, 0.12, random), Prior), DriftingKind.FlashLight);
            return Math.Abs(flash.Stops!.Value - drift) <= flash.PlusMinus!.Value;
        });

        inside.Should().BeInRange(360, 400);
    }

    [Fact]
    public void Frames_alone_tell_the_margin_but_neither_flash_nor_sheet_nor_camera()
    {
        var readings = Enumerable.Range(0, 4).Select(i => new DatedReading(First.AddDays(30 * i), new("frame", CalibrationReadingKind.WhiteMargin, "beneath", 0, 0.1 * i, 0.15))).ToList();

        var history = CalibrationHistory.Of(readings, Prior);

        history.Drifts.Should().ContainSingle().Which.Kind.Should().Be(DriftingKind.WhiteMargin);
        history.Drifts[0].Stops.Should().BeApproximately(0.3, 1e-9, "the kit's own figures are out of it, and the readings lie on a line");
    }

    [Fact]
    public void Two_outings_are_no_drift()
    {
        var flash = Of(CalibrationHistory.Of(Outings(2, -1, 0.05, new Random(1)), Prior), DriftingKind.FlashLight);

        (flash.Stops, flash.IsSignificant).Should().Be((null, false));
    }

    [Fact]
    public void An_outing_of_impossible_readings_is_left_out_and_named_by_its_day()
    {
        List<DatedReading> readings = [.. Outings(3, 0, 0.05, new Random(1)), new(new DateOnly(2026, 12, 1), new("slip", CalibrationReadingKind.FlashMeter, "beneath", 0, 99, 0.1))];

        var history = CalibrationHistory.Of(readings, Prior);

        history.LeftOut.Should().ContainSingle().Which.Subject.Should().Be("2026-12-01, slip");
        Of(history, DriftingKind.FlashLight).Outings.Should().HaveCount(3);
    }

    [Fact]
    public void A_slip_within_a_sound_outing_is_left_out_by_name()
    {
        List<DatedReading> readings = [.. Outings(3, 0, 0.05, new Random(1)), new(First, new("slip", CalibrationReadingKind.FlashMeter, "beneath", 0, 20, 0.1))];

        var left = CalibrationHistory.Of(readings, Prior).LeftOut.Should().ContainSingle().Subject;

        left.Subject.Should().Be("2026-05-09, slip");
        left.Message.Should().Contain("+20.0 stops from the plan");
    }

    /// <summary>What a flash gave in May says little of what it gives in October, once it is known to drift: only the last outing counts.</summary>
    [Fact]
    public void What_drifts_is_known_no_better_than_from_the_last_outing()
    {
        var readings = Outings(6, flash: -0.4, noise: 0.02, new Random(3));
        var last = KitCalibration.Solve([.. readings.Where(reading => reading.Day == readings[^1].Day).Select(reading => reading.Reading)], Prior).Value!;

        Margin(CalibrationHistory.Of(readings, Prior).Pooled!).Should().Be(Margin(last));
    }

    /// <summary>Three outings that show the margin to lie now here, now there, and no line: it differs by more than frames of ±0.15 explain.</summary>
    [Fact]
    public void Outings_that_differ_without_a_line_differ_from_each_other()
    {
        var readings = new[] { 0.6, -0.6, 0.5, -0.5, 0.6, -0.6 }.Select((off, i) => new DatedReading(First.AddDays(20 * i), new("frame", CalibrationReadingKind.WhiteMargin, "beneath", 0, off, 0.15))).ToList();

        var history = CalibrationHistory.Of(readings, Prior);

        history.Drifts.Single().IsSignificant.Should().BeFalse();

        // Their deviation is 0.62 by hand, of which the frames explain 0.15: √(0.62² − 0.15²) = 0.60.
        history.Between("beneath").Stops.Should().BeApproximately(0.60, 0.02);
        history.Between("beneath").IsOfFlash.Should().BeFalse("frames alone do not tell whose it is");
        history.Between("above").Should().Be(OutingDifference.None, "nobody read it");
        history.Used.Select(used => (used.Day, used.Reading)).Should().Equal(readings.Select(reading => (reading.Day, reading.Reading)));
    }

    [Fact]
    public void What_drifts_along_a_line_is_known_from_the_readings_of_the_last_outing()
    {
        var readings = Outings(6, flash: -0.4, noise: 0.02, new Random(3));

        var history = CalibrationHistory.Of(readings, Prior);

        history.Between("beneath").Should().Be(OutingDifference.None, "that it drifts is told by the line");
        history.Used.Select(used => used.Day).Distinct().Should().Equal(readings[^1].Day);
        history.Used.Should().HaveCount(5);
    }

    [Fact]
    public void Any_history_is_told_without_nonsense() =>
        Gen.Select(Gen.Int[0, 400], Gen.Enum<CalibrationReadingKind>(), Gen.Bool, Gen.Double[-5, 5], Gen.Double[0.01, 5]).List[1, 12].Sample(
            rows =>
            {
                var history = CalibrationHistory.Of(
                    [.. rows.Select((row, i) => new DatedReading(First.AddDays(row.Item1), new($"{i}", row.Item2, row.Item3 ? "sedge" : "willow", 0, row.Item4, row.Item5)))], Prior);
                foreach (var drift in history.Drifts)
                {
                    (drift.Stops is not { } stops || double.IsFinite(stops)).Should().BeTrue();
                    (drift.PlusMinus is not { } interval || interval >= 0).Should().BeTrue();
                }

                NextReadings.Of(PlannedKit.Read().Kit!, new LitCards("sedge", ""), Prior, history.Used, history.Between("sedge"), 0.1).Should().NotContain(candidate => !(candidate.After <= candidate.Before + 1e-9));
            },
            iter: DamagedText.Runs);

    private static double Margin(CalibrationResult result)
    {
        var share = result.Quantities.Select(quantity => quantity switch { { Flash: "sedge" } => 1.0, { Quantity: CalibrationQuantity.PanelTransmittance } => 1, { Quantity: CalibrationQuantity.CameraClipPoint } => -1, _ => 0 }).ToList();
        return Math.Sqrt(share.SelectMany((a, i) => share.Select((b, j) => a * b * result.Covariance[i][j])).Sum());
    }

    private static QuantityDrift Of(CalibrationHistory history, DriftingKind kind) => history.Drifts.Single(drift => drift.Kind == kind && (drift.Flash.Length == 0 || drift.Flash == "beneath"));

    // Outings a month apart, each with a meter in the beam and on the sheet, a frame of the bare sheet and a card; the flash drifts by so much from first to last.
    private static List<DatedReading> Outings(int count, double flash, double noise, Random random)
    {
        var (offFlash, offPanel, offClip) = (0.2, -0.1, 0.3);
        var readings = new List<DatedReading>();
        for (var i = 0; i < count; i++)
        {
            var light = offFlash + (flash * i / (count - 1));
            Add(CalibrationReadingKind.FlashMeter, "beneath", light);
            Add(CalibrationReadingKind.PanelMeter, "beneath", light + offPanel);
            Add(CalibrationReadingKind.WhiteMargin, "beneath", light + offPanel - offClip);
            Add(CalibrationReadingKind.FlashMeter, "above", 0);
            Add(CalibrationReadingKind.CardInFrame, "above", -offClip);

            void Add(CalibrationReadingKind kind, string name, double off) =>
                readings.Add(new DatedReading(First.AddDays(30 * i), new($"{kind} {i}", kind, name, 0, off + (noise * Gaussian(random)), Math.Max(0.05, noise))));
        }

        return readings;
    }

    private static double Gaussian(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
