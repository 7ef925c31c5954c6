using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

/// <summary>
/// Lenses of published patents, traced surface by surface, against what is made of the few figures that a kit gives of a lens. The numbers of the patents
/// stand in lens-prescriptions.csv.
/// </summary>
public sealed class PublishedLensTests
{
    // What is stated is one standard deviation; of thirteen lenses none should be off by more than two, and most by less than one.
    private const double Farthest = 2;
    private const double MostWithin = 2.0 / 3;

    public static TheoryData<string> Patents => [.. LensPrescription.All.Select(lens => lens.Patent)];

    public static TheoryData<bool, bool> Given => new() { { true, true }, { true, false }, { false, true }, { false, false } };

    /// <summary>A table that does not give the focal length stated in its patent to 0.5 % has been copied wrongly and may prove nothing.</summary>
    [Theory]
    [MemberData(nameof(Patents))]
    public void A_traced_prescription_has_the_focal_length_that_its_patent_states(string patent)
    {
        var lens = LensPrescription.All.Single(each => each.Patent == patent);

        new LensTrace(lens).FocalLength.Should().BeApproximately(lens.StatedFocalLength, 0.005 * lens.StatedFocalLength);
        new LensTrace(lens).BackFocus.Should().BeApproximately(new LensTrace(lens).LastDistance, 0.011 * lens.StatedFocalLength, "that distance is tabulated too");
    }

    /// <summary>A lens moved forward as a whole has one focal length, separation and pupil ratio: given those, ray by ray the same comes out.</summary>
    [Fact]
    public void A_lens_that_moves_as_a_whole_is_met_exactly_where_all_its_figures_are_given()
    {
        foreach (var lens in LensPrescription.All.Where(lens => !lens.HasCloseSetting))
        {
            var traced = new TracedLens(lens);
            var stack = Stack(lens, traced, closestFocus: true, length: true, traced.PupilRatio);

            (stack.EffectiveFNumber.Value / 8).Should().BeApproximately(traced.EffectiveOverMarked, 1e-9, lens.Patent);
            stack.WorkingDistance.Millimeters.Should().BeApproximately(traced.WorkingDistance, 1e-6, lens.Patent);
            stack.SubjectToEntrancePupil!.Value.Millimeters.Should().BeApproximately(traced.SubjectToEntrancePupil, 1e-6, lens.Patent);
            stack.SubjectToSensor.Millimeters.Should().BeApproximately(traced.SubjectToSensor, 1e-6, lens.Patent);
            stack.Assumptions.Should().BeEmpty();
        }
    }

    /// <summary>
    /// A lens turned round on a ring, its front glass where the mount was: its front principal plane is now the rear one, so the image lies the flange
    /// distance and the way from front glass to that plane behind it. Long lenses so mounted come to no focus without tubes.
    /// </summary>
    [Theory]
    [InlineData("US 5917663 example 2")]
    [InlineData("US 3583791 table 1")]
    [InlineData("DE 953471")]
    public void A_wide_angle_lens_mounted_back_to_front_enlarges_as_its_traced_planes_say(string patent)
    {
        var lens = LensPrescription.All.Single(each => each.Patent == patent);
        var (traced, trace) = (new TracedLens(lens), new LensTrace(lens));
        var flange = Math.Min(44, traced.FrontGlassToSensor / 2);
        var expected = ((flange + trace.FrontPrincipalPlane) / trace.FocalLength) - 1;

        var stack = Stack(lens, traced, closestFocus: true, length: true, traced.PupilRatio, reversed: true);

        stack.Magnification.Value.Should().BeApproximately(expected, 1e-9);
        (stack.EffectiveFNumber.Value / 8).Should().BeApproximately(expected + (1 / traced.PupilRatio), 1e-9, "Gaussian optics: N·(m + 1/p)");
    }

    [Theory]
    [MemberData(nameof(Given))]
    public void Close_up_every_published_lens_lies_within_what_the_model_says_of_itself(bool closestFocus, bool length)
    {
        var off = LensPrescription.All.Select(lens => Off(lens, closestFocus, length)).ToList();

        off.Should().HaveCount(13);
        foreach (var quantity in new Func<Deviation, double>[] { each => each.Exposure, each => each.WorkingDistance, each => each.EntrancePupil })
        {
            off.ConvertAll(each => quantity(each)).Should().OnlyContain(deviation => deviation <= Farthest, string.Join(", ", off));
            off.Count(each => quantity(each) <= 1).Should().BeGreaterThanOrEqualTo((int)(MostWithin * off.Count), string.Join(", ", off));
        }
    }

    /// <summary>
    /// Not among the lenses that the lines are drawn through: DE 1250153 example 2 at 25.9 mm stands 98.46 mm from the sensor, its principal planes 36.59 mm
    /// and 72.55 mm behind the front glass; the data sheet of a lens made after it puts the entrance pupil 23.0 mm behind the glass. As the entrance pupil
    /// lies f·(1 − 1/p) before the front principal plane, p = 1/(1 − 13.59/25.9) = 2.10.
    /// </summary>
    [Fact]
    public void A_lens_not_looked_at_before_has_planes_and_pupils_where_they_are_expected()
    {
        var excess = WideAngleForm.Excess(25.9e-3, 98.46e-3);

        WideAngleForm.Separation(25.9e-3, excess).Should().BeApproximately(35.96e-3, WideAngleForm.SeparationUncertainty * 25.9e-3);
        WideAngleForm.PupilRatio(excess).Should().BeApproximately(2.10, WideAngleForm.PupilRatioUncertainty * 2.10);
    }

    private static Deviation Off(LensPrescription lens, bool closestFocus, bool length)
    {
        var traced = new TracedLens(lens);
        var stack = Stack(lens, traced, closestFocus, length, pupilRatio: null);
        return new Deviation(
            lens.Patent,
            Math.Abs(stack.ExposureLossStops - (2 * Math.Log2(traced.EffectiveOverMarked))) / stack.ExposureUncertainty.Value,
            Math.Abs(stack.WorkingDistance.Millimeters - traced.WorkingDistance) / stack.WorkingDistanceUncertainty.Millimeters,
            Math.Abs(stack.SubjectToEntrancePupil!.Value.Millimeters - traced.SubjectToEntrancePupil) / stack.EntrancePupilUncertainty.Millimeters);
    }

    // Lenses for cameras with a mirror, 44 mm from mount to sensor; those that reach farther back sit nearer.
    private static OpticalStackResult Stack(LensPrescription lens, TracedLens traced, bool closestFocus, bool length, double? pupilRatio, bool reversed = false)
    {
        var flange = Math.Min(44, traced.FrontGlassToSensor / 2);
        return OpticalStack.At(
            new OpticalStackCase
            {
                Lens = new LensOptics
                {
                    FocalLength = Length.FromMillimeters(traced.FocalLength),
                    LargestMagnification = traced.Magnification,
                    FocusesInternally = lens.FocusesInternally,
                    ClosestFocus = closestFocus ? Length.FromMillimeters(traced.SubjectToSensor) : null,
                    BarrelLength = length ? Length.FromMillimeters(traced.FrontGlassToSensor - flange) : null,
                    PupilRatio = pupilRatio,
                    Reversed = reversed,
                },
                SensorWidth = Length.FromMillimeters(36),
                SensorHeight = Length.FromMillimeters(24),
                Aperture = new FNumber(8),
                FlangeDistance = Length.FromMillimeters(flange),
            },
            reversed ? 0 : traced.Magnification);
    }

    private sealed record Deviation(string Patent, double Exposure, double WorkingDistance, double EntrancePupil);
}
