using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Cards;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class SharpnessTextTests
{
    [Fact]
    public void A_steady_picture_is_told_by_its_criterion_alone() =>
        SharpnessText.Of(Sharpness(hand: 1, share: 0.01, finest: 21.5)).Should().Be("Depth of field 1.8 mm. Finest detail 22 µm (two points apart, Rayleigh).");

    // 36 pixels of 4.4 µm smear 158 µm; with 21.5 µm in quadrature 160 µm.
    [Fact]
    public void A_smeared_picture_says_what_is_left_of_its_detail_by_whose_doing_and_what_would_pass() =>
        SharpnessText.Of(Sharpness(hand: 36, share: 1, finest: 160)).Should().Be(
            "Depth of field 1.8 mm. Finest detail 22 µm (two points apart, Rayleigh), 160 µm with smear: 36 pixels, mostly by the camera's sway in ambient light, 6.5 pass for sharp.");

    [Fact]
    public void Smear_that_passes_for_sharp_is_told_without_a_limit() =>
        SharpnessText.Of(Sharpness(hand: 6, share: 1, finest: 34.0)).Should().EndWith("34 µm with smear: 6 pixels, mostly by the camera's sway in ambient light.");

    [Fact]
    public void Coarse_pixels_are_named_where_they_rule() =>
        SharpnessText.Of(Sharpness(hand: 0, share: 1, finest: 30) with { StillDetail = Length.FromMicrometers(30) }).Should().Contain("30 µm (two pixels)");

    private static SharpnessPlan Sharpness(double hand, double share, double finest) => new()
    {
        DepthOfField = Length.FromMillimeters(1.84),
        CircleOfConfusion = Length.FromMicrometers(28.6),
        AiryDisc = Length.FromMicrometers(43),
        RayleighSeparation = Length.FromMicrometers(21.5),
        StillDetail = Length.FromMicrometers(21.5),
        FinestDetail = Length.FromMicrometers(finest),
        PixelAtSubject = Length.FromMicrometers(4.4),
        Smear = new MotionBlurResult(
            new MotionBlurPart(MotionBlurKind.Hand, hand, share), new MotionBlurPart(MotionBlurKind.Subject, 0, share), new MotionBlurPart(MotionBlurKind.Flash, 0, 1 - share)),
        SmearLimit = 6.5,
    };
}
