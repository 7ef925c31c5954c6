using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class BlurTests
{
    // The table below counts diffraction as N/750 mm, which 2.44·λ gives at 546.4 nm.
    private const double TableWavelength = 1e-3 / 750 / 2.44;

    /// <summary>Hansma's relations by hand at half life size, 10 mm deep, f/16 (24 effective): 52.08 and 32.00 µm make 61.13 µm; 0.2 %.</summary>
    [Fact]
    public void Blur_of_a_beetle_at_f_16_is_defocus_and_diffraction_in_quadrature()
    {
        var defocus = Blur.FromOffset(0.5, 24, 5e-3);
        var diffraction = Diffraction.AiryDiscDiameter(24, TableWavelength);

        (defocus * 1e6).Should().BeApproximately(52.08, 0.1);
        (diffraction * 1e6).Should().BeApproximately(32.00, 0.06);
        (Blur.Combined(defocus, diffraction) * 1e6).Should().BeApproximately(61.13, 0.12);
    }

    [Fact]
    public void Blur_over_a_subject_equals_the_circle_of_confusion_at_the_limits_of_its_depth_of_field()
    {
        var stack = OpticalStack.FromExtension(
            Length.FromMillimeters(100), Length.FromMillimeters(50), new FNumber(16), Length.FromMillimeters(36), Length.FromMillimeters(24), 0.7);
        var zone = DepthOfField.Of(stack, Length.FromMillimeters(0.03));

        var near = Blur.OverSubject(stack, zone.Near * 2).Nearest.Defocus;
        var far = Blur.OverSubject(stack, zone.Far!.Value * 2).Farthest.Defocus;

        near.Millimeters.Should().BeApproximately(0.03, 1e-9);
        far.Millimeters.Should().BeApproximately(0.03, 1e-9);
    }

    [Fact]
    public void The_middle_of_a_subject_shows_diffraction_alone()
    {
        var stack = OpticalStack.FromExtension(
            Length.FromMillimeters(60), Length.FromMillimeters(60), new FNumber(8), Length.FromMillimeters(36), Length.FromMillimeters(24));

        var blur = Blur.OverSubject(stack, Length.FromMillimeters(4));

        blur.Middle.Defocus.Meters.Should().Be(0);
        blur.Middle.Total.Should().Be(blur.Middle.Diffraction);
        blur.Nearest.Total.Should().BeGreaterThan(blur.Farthest.Total, "the near point is nearer the pupil");
        blur.Farthest.Total.Should().BeGreaterThan(blur.Middle.Total);
    }

    [Fact]
    public void A_subject_that_reaches_into_the_lens_is_refused()
    {
        var stack = OpticalStack.FromExtension(
            Length.FromMillimeters(60), Length.FromMillimeters(60), new FNumber(8), Length.FromMillimeters(36), Length.FromMillimeters(24));

        FluentActions.Invoking(() => Blur.OverSubject(stack, Length.FromMeters(1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Theory]
    [InlineData(double.NaN, 16)]
    [InlineData(-1e-3, 16)]
    [InlineData(1e-3, 0)]
    [InlineData(1e-3, double.NaN)]
    public void A_defocus_or_aperture_that_is_none_is_refused(double defocus, double n) => FluentActions.Invoking(
            () => Blur.Combined(defocus, Blur.FromOffset(1, n, 1e-3))).Should().Throw<ArgumentOutOfRangeException>();
}
