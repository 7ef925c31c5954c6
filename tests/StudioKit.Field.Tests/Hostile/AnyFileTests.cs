using StudioKit.Field.Calibration;
using StudioKit.Field.Pictures;
using StudioKit.Planning;

namespace StudioKit.Field.Tests.Hostile;

/// <summary>Whatever is in a table or a correction file, it is read or refused by a sentence, and what is read can be planned with.</summary>
public sealed class AnyFileTests
{
    private const string Table =
        """
        name,kind,flash,set-up,framing,pitch,power,distance,f-number,iso,reflectance,reading,uncertainty,date
        beneath,flash-meter,sedge,,,,1/1,1 m,,100,,f/22,0.1 stop,2026-05-09
        sheet,panel-meter,,white,,,1/4,45 cm,,,,32 lx·s,,2026-05-09
        bare,white-margin,,white,reed 50 at 1:2,60°,1/8,30 cm,f/16,400,,-0.4 stop,,2026-05-10
        card,card-in-frame,willow,white,reed 50 at 1:2,,1/8,40 cm,f/16,400,0.18,-2 stops,0.2 stop,
        """;

    private const string Correction =
        """
        # Measured corrections.
        correction-of: "Reed margin"
        date: 2026-05-09
        flashes:
          - flash: "sedge"
            light: {stops: -0.42, plus-minus: 0.08, before: 38, after: 32.9}   # guide number in m
        panel-transmittance: {stops: 0.11, plus-minus: 0.12, before: 0.5, after: 0.54}
        camera-clip-point: {stops: 0.6, plus-minus: 0.1, before: 0, after: 0.6}
        tone-curve:
          camera: "body R"
          plus-minus: 0.04
          standard: [0, 0.1, 0.25, 0.5, 1, 2, 4]
          light: [0, 0.25, 0.58, 1.02, 1.7, 2.8, 4.8]
        disagreeing-readings:
          - "wrong zoom"
        """;

    [Fact]
    public void Any_table_of_readings_is_read_or_refused_and_never_calibrates_to_nonsense() => DamagedText.Of(Table).Sample(
        text =>
        {
            var read = FieldReadingTable.Parse("readings.csv", text);
            IsSaid(read.Diagnostics, read.IsSound);
            if (read.IsSound && new PlannedReadings(PlannedKit.Plan()).Of(read.Value) is { IsSound: true } planned)
            {
                var solved = KitCalibration.Solve(planned.Value, new CalibrationPrior());
                IsSaid(solved.Diagnostics, solved.IsSound);
                (solved.Value?.Quantities ?? []).Should().NotContain(quantity => !(Math.Abs(quantity.CorrectionStops) <= KitCorrection.MostStops && quantity.UncertaintyStops > 0));
            }
        },
        iter: DamagedText.Runs);

    [Fact]
    public void Any_correction_file_is_refused_or_can_be_planned_with() => DamagedText.Of(Correction).Sample(
        text =>
        {
            var read = KitCorrectionFile.Read("kit.correction.yaml", text);
            IsSaid(read.Diagnostics, read.IsSound);
            if (read.Value is { } correction)
            {
                var kit = correction.ApplyTo(PlannedKit.Read(), text);
                KitCorrectionFile.Read("again", KitCorrectionFile.Write(correction)).IsSound.Should().BeTrue("what was read can be written and read again");
                kit.Kit!.Flashes.Should().OnlyContain(flash => flash.GuideNumber.AtIso100.Meters > 0 && double.IsFinite(flash.GuideNumber.AtIso100.Meters));
                kit.Kit.Panel.Transmittance.Should().BeInRange(double.Epsilon, 1);
                Enumerable.Range(0, 256).Select(code => (correction.ToneCurve ?? ToneCurve.Standard).Linear(code / 255.0)).Should().BeInAscendingOrder("a curve rises all along").And.HaveElementAt(255, 1);
            }
        },
        iter: DamagedText.Runs);

    [Theory]
    [InlineData("flashes:\n  - flash: sedge\n    light: {stops: 0.1, plus-minus: 1e300, before: 30, after: 31}")]
    [InlineData("camera-clip-point: {stops: 0.1, plus-minus: -1, before: 0, after: 0.1}")]
    [InlineData("camera-clip-point: {stops: 9, plus-minus: 0.1, before: 0, after: 9}")]
    [InlineData("camera-clip-point: lots")]
    [InlineData("flashes: all")]
    [InlineData("tone-curve: {camera: '', plus-minus: 0.1, standard: [0, 1], light: [0, -1]}")]
    [InlineData("tone-curve: {camera: '', plus-minus: 0.1, standard: [0, 1, 2], light: [0, 1]}")]
    [InlineData("tone-curve: {camera: '', plus-minus: 0.1, standard: [0, .nan], light: [0, 1]}")]
    [InlineData("tone-curve: {camera: '', plus-minus: 0.1, standard: [0, 1e-9], light: [0, 1]}")]
    [InlineData("flashes: [{light: {stops: 0, plus-minus: 0.1, before: 30, after: 30}}]")]
    public void A_correction_out_of_all_bounds_is_refused_by_a_sentence(string entry) =>
        IsSaid(KitCorrectionFile.Read("kit.correction.yaml", $"correction-of: Reed margin\ndate: 2026-05-09\n{entry}\n").Diagnostics, isSound: false);

    [Fact]
    public void A_correction_file_of_endless_brackets_is_refused_before_it_is_climbed() =>
        KitCorrectionFile.Read("kit.correction.yaml", "correction-of: " + new string('[', 60_000)).Diagnostics.Single().Message.Should().Contain("nested deeper");

    [Fact]
    public void The_largest_corrections_that_are_read_can_still_be_planned_with()
    {
        const string Text = "correction-of: Reed margin\ndate: 2026-05-09\nflashes: [{flash: sedge, light: {stops: 4, plus-minus: 4, before: 30, after: 120}}]\ncamera-clip-point: {stops: -4, plus-minus: 4, before: 0, after: -4}\n";

        KitPlanner.Plan(KitCorrectionFile.Read("kit.correction.yaml", Text).Value!.ApplyTo(PlannedKit.Read(), Text)).Exposures.Should().NotBeEmpty();
    }

    [Fact]
    public void A_table_of_a_million_lines_is_refused_at_once()
    {
        var (row, head) = ("a,flash-meter,1/1,f/8\n", "name,kind,power,reading\n");

        FieldReadingTable.Parse("readings.csv", head + string.Concat(Enumerable.Repeat(row, 2001))).Diagnostics.Single().Message.Should().Contain("2001 readings");
        FieldReadingTable.Parse("readings.csv", head + string.Concat(Enumerable.Repeat(row, 100_000))).Diagnostics.Single().Message.Should().Contain("larger than");
        FieldReadingTable.Parse("readings.csv", head + string.Concat(Enumerable.Repeat("a,flash-meter,1/1,dark\n", 500))).Diagnostics.Should().HaveCount(21);
    }

    private static void IsSaid(IReadOnlyList<FieldDiagnostic> faults, bool isSound)
    {
        (isSound || faults.Count > 0).Should().BeTrue("a refusal has its reason");
        faults.Should().NotContain(fault => fault.Message.Length == 0 || !fault.Code.StartsWith("FLD", StringComparison.Ordinal) || fault.ToString().Length > 2000);
    }
}
