using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.Physics.Optics;

namespace StudioKit.Field.Tests.Scale;

/// <summary>Scales of whole, cropped and resized pictures against sensor width over pixels over magnification, worked out by hand.</summary>
public sealed class PictureScalingTests
{
    // A sensor 36 mm wide of 6000 pixels has a pitch of 6 µm; at half life size a pixel shows 12 µm.
    private static readonly ScaleReference HalfLifeSize = ScaleReference.OfFraming(0.036, 0.5, new PixelDimensions(6000, 4000));

    [Theory]
    [InlineData(6000, 4000)]
    [InlineData(4000, 6000)]
    public void A_whole_picture_shows_the_sensor_over_the_magnification(int wide, int high) =>
        Micrometres(Picture(wide, high), new PictureMaking()).Should().BeApproximately(12, 1e-9);

    /// <summary>Raw converters give a few rows and columns more or fewer than the camera; they are the camera's own pixels.</summary>
    [Fact]
    public void A_few_pixels_more_at_the_edges_are_still_the_cameras() =>
        Micrometres(Picture(6024, 4020), new PictureMaking()).Should().BeApproximately(12, 1e-9);

    [Theory]
    [InlineData(3000, 2000)]
    [InlineData(4000, 4000)]
    [InlineData(5900, 3900)]
    [InlineData(12000, 8000)]
    public void A_picture_of_another_size_is_refused_until_it_is_told_how_it_was_made(int wide, int high)
    {
        var refused = PictureScaling.Of(Picture(wide, high), HalfLifeSize, new PictureMaking());

        refused.Diagnostics.Should().ContainSingle().Which.Code.Should().Be("FLD321");
        refused.Diagnostics[0].Message.Should().Contain($"{wide} x {high}").And.Contain("6000 x 4000");
        refused.Diagnostics[0].Hint.Should().Contain("--cropped").And.Contain("--resized-from");
    }

    [Theory]
    [InlineData(3000, 2000)]
    [InlineData(1500, 4000)]
    public void A_crop_keeps_the_size_of_a_pixel(int wide, int high) =>
        Micrometres(Picture(wide, high), new PictureMaking { IsCropped = true }).Should().BeApproximately(12, 1e-9);

    [Fact]
    public void A_picture_made_smaller_has_larger_pixels() =>
        Micrometres(Picture(1500, 1000), new PictureMaking { ResizedFrom = new PixelDimensions(6000, 4000) }).Should().BeApproximately(48, 1e-9);

    /// <summary>3000 pixels of 12 µm shown by 1000: 36 µm.</summary>
    [Fact]
    public void A_crop_made_smaller_has_larger_pixels_by_what_the_crop_was_made_smaller() =>
        Micrometres(Picture(1000, 1000), new PictureMaking { IsCropped = true, ResizedFrom = new PixelDimensions(3000, 3000) }).Should().BeApproximately(36, 1e-9);

    [Fact]
    public void What_is_told_must_be_possible()
    {
        PictureScaling.Of(Picture(7000, 4000), HalfLifeSize, new PictureMaking { IsCropped = true }).Diagnostics.Single().Code.Should().Be("FLD322");
        PictureScaling.Of(Picture(1000, 1000), HalfLifeSize, new PictureMaking { ResizedFrom = new PixelDimensions(6000, 4000) }).Diagnostics.Single().Code.Should().Be("FLD323");
        PictureScaling.Of(Picture(500, 500), HalfLifeSize, new PictureMaking { ResizedFrom = new PixelDimensions(3000, 3000) }).Diagnostics.Single().Code.Should().Be("FLD321");
    }

    /// <summary>Sensor and magnification alone, as typed: the file's own record of the camera's pixels tells of a crop.</summary>
    [Fact]
    public void Without_the_cameras_pixels_the_files_own_record_is_held_against_it()
    {
        var reference = ScaleReference.OfFraming(0.036, 0.5, null);

        Micrometres(Picture(6000, 4000, recorded: new PixelDimensions(6000, 4000)), new PictureMaking(), reference).Should().BeApproximately(12, 1e-9);
        PictureScaling.Of(Picture(3000, 2000, recorded: new PixelDimensions(6000, 4000)), reference, new PictureMaking()).Diagnostics.Single().Code.Should().Be("FLD321");
        Micrometres(Picture(3000, 2000, recorded: new PixelDimensions(6000, 4000)), new PictureMaking { IsCropped = true }, reference).Should().BeApproximately(12, 1e-9);
    }

    [Fact]
    public void Where_nothing_tells_of_the_camera_the_picture_counts_as_whole_and_that_is_said()
    {
        var reference = ScaleReference.OfFraming(0.036, 0.5, null);

        PictureScaling.Of(Picture(3000, 2000), reference, new PictureMaking()).Value!.Caveats.Should().ContainSingle().Which.Should().Contain("taken for the whole");
        PictureScaling.Of(Picture(3000, 2000), reference, new PictureMaking { IsCropped = true }).Diagnostics.Single().Code.Should().Be("FLD322");
    }

    /// <summary>6000 pixels of 12 µm shown by 1500 of a preview: 48 µm, without being told.</summary>
    [Fact]
    public void The_preview_in_a_raw_file_is_scaled_by_its_pixels()
    {
        var preview = new PixelRows("a.raw", 1500, 1000, new byte[4 * 1500 * 1000])
        {
            Settings = new FrameSettings { IsPreview = true, RecordedPixels = new PixelDimensions(6016, 4016) },
        };

        Micrometres(preview, new PictureMaking()).Should().BeApproximately(12 * 6016 / 1500.0, 1e-9);
    }

    [Fact]
    public void A_picture_at_a_planned_framing_has_the_plans_scale_and_its_uncertainty()
    {
        var plan = PlannedKit.Plan();
        var framing = plan.Framings.First(candidate => candidate.Reached);
        var camera = plan.Kit.Camera;

        var reference = ScaleReference.OfPlan(plan, framing.Name, null).Value!;

        // Pitch over magnification, and how a displaced subject changes the image of a lens: u = f(1 + 1/m), so dm/m = m·du/f.
        var expected = PixelScale.AtSubject(PixelScale.PixelPitch(camera.SensorWidth.Meters, camera.PixelsWide), framing.Magnification.Value);
        (reference.FieldWidth / camera.PixelsWide).Should().BeApproximately(expected, 1e-12);
        var (f, du) = (framing.FocalLength.Meters, framing.WorkingDistanceUncertainty.Meters);
        double At(double u) => f / (u - f);
        var u = f * (1 + (1 / framing.Magnification.Value));
        var numeric = (At(u - (du * 1e-4)) - At(u + (du * 1e-4))) / 2e-4 / At(u);
        reference.RelativeUncertainty.Should().BeApproximately(Math.Max(0.01, numeric), 1e-6);
    }

    [Fact]
    public void A_framing_that_the_plan_does_not_have_is_refused_with_what_it_has()
    {
        var refused = ScaleReference.OfPlan(PlannedKit.Plan(), "no such framing at all", null);

        refused.Diagnostics.Single().ToString().Should().Contain(PlannedKit.Plan().Framings.First(framing => framing.Reached).Name);
    }

    private static double Micrometres(IRowSource picture, PictureMaking making, ScaleReference? reference = null) =>
        PictureScaling.Of(picture, reference ?? HalfLifeSize, making).Value!.MetresPerPixel * 1e6;

    private static Sized Picture(int wide, int high, PixelDimensions? recorded = null) => new(wide, high, new FrameSettings { RecordedPixels = recorded });

    // Only its size is asked for.
    private sealed record Sized(int Width, int Height, FrameSettings Settings) : IRowSource
    {
        public string Name => "beetle.jpg";

        public double BrightnessStep => 0;

        public FieldDiagnostic? Read(Action<PictureBand> visit) => throw new NotSupportedException();
    }
}
