using StudioKit.Field.Calibration;
using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Tests.Calibration;

public sealed class KitCorrectionFileTests
{
    private static readonly KitSpec Kit = new()
    {
        Name = "Fen \"and\" heath: kit\\2",
        Camera = new CameraSpec { Name = "camera", SensorWidth = Length.FromMillimeters(36), SensorHeight = Length.FromMillimeters(24) },
        Lenses = [],
        Flashes = [new FlashSpec { Name = "beneath", GuideNumber = new GuideNumber(Length.FromMeters(40)) }],
    };

    [Fact]
    public void A_correction_comes_back_as_it_was_written()
    {
        var correction = Correction(-1, 0.5, 0.25);

        var back = KitCorrectionFile.Read("kit.correction.yaml", KitCorrectionFile.Write(correction)).Value!;

        // The file gives thousandths of a stop and four decimals of the figures, for people to read.
        back.Should().BeEquivalentTo(correction, options => options
            .Using<double>(context => context.Subject.Should().BeApproximately(context.Expectation, 0.00051)).WhenTypeIs<double>());
    }

    [Fact]
    public void A_tone_curve_comes_back_as_it_was_written_and_corrects_no_figure()
    {
        var correction = new KitCorrection
        {
            Kit = Kit.Name,
            Date = new DateOnly(2026, 5, 9),
            ToneCurve = new ToneCurve([0, 0.1, 1, 4], [0, 0.25, 1.7, 4.9]) { Camera = "body \"R\"", PlusMinus = 0.04 },
        };

        var back = KitCorrectionFile.Read("kit.correction.yaml", KitCorrectionFile.Write(correction)).Value!;

        back.ToneCurve!.Should().BeEquivalentTo(correction.ToneCurve);
        back.CorrectsFigures.Should().BeFalse();
    }

    [Fact]
    public void Half_the_light_is_a_guide_number_smaller_by_the_root_of_two()
    {
        var corrected = Correction(-1, 0.5, 0.25).ApplyTo(Kit);

        corrected.Flashes[0].GuideNumber.AtIso100.Meters.Should().BeApproximately(40 / Math.Sqrt(2), 1e-9);
        corrected.Panel.Transmittance.Should().BeApproximately(0.5 * Math.Sqrt(2), 1e-9);
        corrected.Camera.ClipPoint.Value.Should().Be(0.25);
        Kit.Flashes[0].GuideNumber.AtIso100.Meters.Should().Be(40, "the kit given is never changed");
    }

    [Fact]
    public void No_sheet_comes_to_let_through_more_than_all_light() =>
        Correction(0, 3, 0).ApplyTo(Kit).Panel.Transmittance.Should().Be(1);

    [Theory]
    [InlineData("")]
    [InlineData("- a list")]
    [InlineData("correction-of: [")]
    [InlineData("correction-of: kit")]
    [InlineData("correction-of: kit\ndate: 2026-05-09\npanel-transmittance: {stops: .nan, plus-minus: 0, before: 0, after: 0}")]
    [InlineData("correction-of: kit\ndate: 2026-05-09\npanel-transmittance: {stops: 99, plus-minus: 0, before: 0, after: 0}")]
    public void A_damaged_file_is_refused(string text) =>
        KitCorrectionFile.Read("kit.correction.yaml", text).Diagnostics.Should().ContainSingle().Which.Code.Should().Be("FLD211");

    private static KitCorrection Correction(double flash, double panel, double clip) => KitCorrection.From(
        Kit,
        new CalibrationResult(
            [
                new(CalibrationQuantity.FlashLight, "beneath", 0.5, flash, 0.1),
                new(CalibrationQuantity.PanelTransmittance, "", 0.3, panel, 0.1),
                new(CalibrationQuantity.CameraClipPoint, "", 0.5, clip, 0.1),
            ],
            [],
            []),
        new DateOnly(2026, 5, 9));
}
