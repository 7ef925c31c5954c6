using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class MotionBlurTests
{
    /// <summary>m·v·t by hand: half life size, 100 mm/s, 4.5 µm pixels: 50 µm or 11.1 pixels in 1/1000 s, 2.5 µm or 0.556 in 1/20 000 s.</summary>
    [Theory]
    [InlineData(1000, 50, 11.11)]
    [InlineData(20_000, 2.5, 0.5556)]
    public void Smear_is_magnification_times_speed_times_time(double oneOver, double micrometres, double pixels)
    {
        var smear = MotionBlur.OnSensor(0.5, 0.1, 1 / oneOver);

        (smear * 1e6).Should().BeApproximately(micrometres, 1e-3 * micrometres);
        (smear / 4.5e-6).Should().BeApproximately(pixels, 1e-3 * pixels);
    }

    [Fact]
    public void The_longest_time_smears_just_the_pixels_allowed() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[1e-4, 1], Gen.Double[0.5, 10]).Sample((m, v, pixels) =>
            Math.Abs((MotionBlur.OnSensor(m, v, MotionBlur.LongestTime(m, v, 4e-6, pixels)) / 4e-6) - pixels) < 1e-9);

    [Fact]
    public void Flash_and_ambient_parts_are_weighed_by_their_light()
    {
        var motion = new MotionBlurCase
        {
            Magnification = new Magnification(0.5),
            PixelPitch = Length.FromMicrometers(4.5),
            SubjectSpeed = Speed.FromMillimetersPerSecond(100),
            FlashDuration = Duration.FromSeconds(1.0 / 20_000),
            Shutter = new ShutterSpeed(1.0 / 1000),
        };

        var flashOnly = MotionBlur.InPixels(motion);
        flashOnly.FlashPixels.Should().BeApproximately(0.5556, 0.0005);
        flashOnly.AmbientPixels.Should().BeApproximately(11.11, 0.01);
        flashOnly.CombinedPixels.Should().BeApproximately(flashOnly.FlashPixels, 1e-12);
        MotionBlur.InPixels(motion with { AmbientShare = 1 }).CombinedPixels.Should().BeApproximately(11.11, 0.01);
        MotionBlur.InPixels(motion with { AmbientShare = 0.3 }).CombinedPixels.Should().BeInRange(0.5556, 11.11);
    }

    [Fact]
    public void Hand_and_subject_add_like_the_sides_of_a_right_triangle()
    {
        var motion = new MotionBlurCase
        {
            Magnification = new Magnification(1),
            PixelPitch = Length.FromMicrometers(5),
            SubjectSpeed = Speed.FromMillimetersPerSecond(3),
            HandSpeed = Speed.FromMillimetersPerSecond(4),
            Shutter = new ShutterSpeed(1.0 / 100),
        };

        // 5 mm/s for 10 ms at life size is 50 µm.
        MotionBlur.InPixels(motion).AmbientPixels.Should().BeApproximately(10, 1e-9);
    }

    /// <summary>
    /// Independent route: points spread evenly over the smear of each light, counted by that light's share; a bar of length L has the variance L²/12.
    /// </summary>
    [Fact]
    public void Smear_of_two_lights_has_the_second_moment_of_their_sum() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[1e-4, 0.1], Gen.Double[1e-5, 1e-3]).Sample((share, shutter, flash) =>
        {
            var motion = MotionBlur.InPixels(new MotionBlurCase
            {
                Magnification = new Magnification(1),
                PixelPitch = Length.FromMicrometers(5),
                SubjectSpeed = Speed.FromMillimetersPerSecond(20),
                FlashDuration = Duration.FromSeconds(flash),
                Shutter = new ShutterSpeed(shutter),
                AmbientShare = share,
            });
            var moment = (share * SecondMoment(20e-3 * shutter / 5e-6)) + ((1 - share) * SecondMoment(20e-3 * flash / 5e-6));
            return Math.Abs(motion.CombinedPixels - Math.Sqrt(12 * moment)) < 1e-3 * motion.CombinedPixels;
        });

    [Fact]
    public void The_cause_that_counts_most_is_named_by_its_share_of_the_light()
    {
        var motion = new MotionBlurCase
        {
            Magnification = new Magnification(1),
            PixelPitch = Length.FromMicrometers(5),
            SubjectSpeed = Speed.FromMillimetersPerSecond(20),
            HandSpeed = Speed.FromMillimetersPerSecond(5),
            FlashDuration = Duration.FromSeconds(1.0 / 1000),
            Shutter = new ShutterSpeed(1.0 / 100),
        };

        // By hand: the subject smears 40 pixels in the shutter's time, the hand 10, both 4.1 in the flash's.
        MotionBlur.InPixels(motion with { AmbientShare = 0.5 }).Largest.Kind.Should().Be(MotionBlurKind.Subject);
        MotionBlur.InPixels(motion with { AmbientShare = 0.001 }).Largest.Kind.Should().Be(MotionBlurKind.Flash, "40·√0.001 is 1.3");
        MotionBlur.InPixels(motion with { AmbientShare = 1, SubjectSpeed = Speed.Zero }).Largest.Kind.Should().Be(MotionBlurKind.Hand);
    }

    [Theory]
    [InlineData(0, 0.1, 0.01)]
    [InlineData(1, -0.1, 0.01)]
    [InlineData(1, 0.1, double.NaN)]
    [InlineData(double.NaN, 0.1, 0.01)]
    public void Motion_that_is_none_is_refused(double m, double v, double t) =>
        FluentActions.Invoking(() => MotionBlur.OnSensor(m, v, t)).Should().Throw<ArgumentOutOfRangeException>();

    private static double SecondMoment(double length) =>
        Enumerable.Range(0, 1000).Average(i => Math.Pow(length * (((i + 0.5) / 1000) - 0.5), 2));

    // Rayleigh's criterion leaves a dip of 26 % between two points (Born and Wolf, 8.6.2): a picture of a fifth of the light cannot fill it.
    [Fact]
    public void A_faint_ghost_over_a_sharp_picture_takes_no_detail_away()
    {
        var flash = new MotionBlurPart(MotionBlurKind.Flash, 2, 0.8);
        var ghost = new MotionBlurResult(new MotionBlurPart(MotionBlurKind.Hand, 60, 0.2), new MotionBlurPart(MotionBlurKind.Subject, 30, 0.2), flash);

        ghost.TakenAwayPixels.Should().BeLessThanOrEqualTo(2);
        ghost.Largest.Should().Be(flash);
    }

    [Fact]
    public void A_picture_of_ambient_light_alone_loses_what_it_smears()
    {
        var dusk = new MotionBlurResult(new MotionBlurPart(MotionBlurKind.Hand, 3, 1), new MotionBlurPart(MotionBlurKind.Subject, 4, 1), new MotionBlurPart(MotionBlurKind.Flash, 9, 0));

        dusk.TakenAwayPixels.Should().BeApproximately(5, 1e-12);
        dusk.Largest.Kind.Should().Be(MotionBlurKind.Subject);
    }
}
