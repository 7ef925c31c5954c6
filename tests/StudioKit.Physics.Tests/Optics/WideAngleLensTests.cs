using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

/// <summary>A 15 mm lens that focuses to 0.20 m at a quarter life size, on a camera with 44 mm from mount to sensor.</summary>
public sealed class WideAngleLensTests
{
    // A thin lens would stand 15·(2 + 1/4 + 4) = 93.75 mm from subject to sensor; 200 mm are given, so the principal planes lie 106.25 mm apart.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_focal_length_is_never_lengthened_to_meet_a_closest_focus(bool inside)
    {
        var stack = OpticalStack.At(Lens(inside), 0.25);

        stack.FocalLength.Millimeters.Should().BeApproximately(15, 1e-9);
        stack.SubjectToSensor.Millimeters.Should().BeApproximately(200, 1e-9);
        stack.WorkingDistance.Millimeters.Should().BeInRange(95, 110, "50 mm of lens, 44 mm of camera and 3.75 mm of travel leave some 100 of 200 mm");
    }

    // N_e = N·(1 + m/p): 0.64 stops for pupils alike, less for a retrofocus lens; 2.8 stops were lost to a focal length of 32 mm.
    [Fact]
    public void The_large_exit_pupil_of_a_wide_angle_lens_loses_little_light()
    {
        var stack = OpticalStack.At(Lens(inside: true), 0.25);

        stack.ExposureLossStops.Should().BeInRange(0.1, 0.35);
        stack.ExposureUncertainty.Value.Should().BeInRange(0.03, 0.3);
    }

    [Fact]
    public void What_is_assumed_is_told_with_its_uncertainty()
    {
        var inside = OpticalStack.At(Lens(inside: true), 0.25);
        var whole = OpticalStack.At(Lens(inside: false), 0.25);

        inside.Assumptions.Select(each => each.Kind).Should().Equal(
            LensAssumptionKind.FrontGlassToMount, LensAssumptionKind.PrincipalPlanes, LensAssumptionKind.PupilRatio,
            LensAssumptionKind.FocalLengthCloseUp, LensAssumptionKind.PupilWhileFocusing);
        whole.Assumptions.Select(each => each.Kind).Should().Equal([LensAssumptionKind.FrontGlassToMount, LensAssumptionKind.PupilRatio], "its planes follow from closest focus");
        inside.Assumptions.Should().OnlyContain(each => each.Uncertainty > 0);
        inside.Caveats.Should().Contain(caveat => caveat.Contains("marked focal length"));
    }

    // Planes 106 mm apart in a lens that stands 94 mm from front glass to sensor: the traced prescriptions have at most 0.55 of that distance.
    [Fact]
    public void Figures_that_do_not_go_together_are_doubted() =>
        OpticalStack.At(Lens(inside: false), 0.25).Caveats.Should().Contain(caveat => caveat.Contains("one of them is off"));

    [Fact]
    public void Given_figures_leave_nothing_to_assume_of_a_lens_that_moves_as_a_whole()
    {
        var lens = Lens(inside: false);
        var stack = OpticalStack.At(lens with { Lens = lens.Lens with { BarrelLength = Length.FromMillimeters(80), PupilRatio = 3 } }, 0.25);

        stack.Assumptions.Should().BeEmpty();
        stack.ExposureUncertainty.Value.Should().BeApproximately(0, 1e-12);
        stack.ExposureLossStops.Should().BeApproximately(2 * Math.Log2(1 + (0.25 / 3)), 1e-9);
        stack.WorkingDistance.Millimeters.Should().BeApproximately(200 - 44 - 80 - 3.75, 1e-9);
    }

    [Fact]
    public void The_usual_form_grows_with_how_far_the_front_glass_stands_from_the_sensor() =>
        Gen.Select(Gen.Double[10, 60], Gen.Double[1, 6], Gen.Double[0.01, 1]).Sample((f, times, more) =>
        {
            var (near, far) = (WideAngleForm.Excess(f, f * times), WideAngleForm.Excess(f, f * (times + more)));
            return far >= near
                && WideAngleForm.Separation(f, far) >= WideAngleForm.Separation(f, near)
                && WideAngleForm.PupilRatio(far) >= WideAngleForm.PupilRatio(near)
                && (times > 2 || near == 0);
        });

    [Theory]
    [InlineData(0, 0.09)]
    [InlineData(0.02, 0)]
    [InlineData(0.02, double.NaN)]
    public void A_lens_that_is_none_is_refused(double focalLength, double toSensor) =>
        FluentActions.Invoking(() => WideAngleForm.Excess(focalLength, toSensor)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void A_form_that_is_none_is_refused()
    {
        FluentActions.Invoking(() => WideAngleForm.Separation(0.02, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => WideAngleForm.PupilRatio(double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => WideAngleForm.ExcessOfSeparation(0, 0.02)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static OpticalStackCase Lens(bool inside) => new()
    {
        Lens = new LensOptics
        {
            FocalLength = Length.FromMillimeters(15),
            LargestMagnification = 0.25,
            FocusesInternally = inside,
            ClosestFocus = Length.FromMillimeters(200),
        },
        Aperture = new FNumber(8),
        SensorWidth = Length.FromMillimeters(36),
        SensorHeight = Length.FromMillimeters(24),
    };
}
