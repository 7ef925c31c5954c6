using SkiaSharp;
using StudioKit.Field.Pictures;
using StudioKit.Field.Plates;
using StudioKit.Field.Scale;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Plates;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Pictures;
using StudioKit.FieldFiles.Tests.Scale;

namespace StudioKit.FieldFiles.Tests.Plates;

public sealed class PlateImageTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>Exif 2.3 (CIPA DC-008), tag 274: which side of the stored picture is up; the dark quarter ends where the tag puts it.</summary>
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(2, 1, 0)]
    [InlineData(3, 1, 1)]
    [InlineData(4, 0, 1)]
    [InlineData(5, 0, 0)]
    [InlineData(6, 1, 0)]
    [InlineData(7, 1, 1)]
    [InlineData(8, 0, 1)]
    public void A_picture_is_printed_the_way_it_is_seen(ushort orientation, int darkRight, int darkDown)
    {
        var path = Quartered(orientation);

        using var seen = SKBitmap.Decode(PlateImage.Print(path, 300).Value!.Jpeg);

        (seen.Width > seen.Height).Should().Be(orientation < 5);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var (right, down) = (quarter % 2, quarter / 2);
            var level = seen.GetPixel(seen.Width * ((2 * right) + 1) / 4, seen.Height * ((2 * down) + 1) / 4).Green;
            (level < 60).Should().Be(right == darkRight && down == darkDown, $"that is quarter {quarter}");
        }

        PlateImage.Find(_scratch.Path, LogSamples.Frame with { FileName = Path.GetFileName(path) }).File!.Seen.Wide.Should().Be(orientation < 5 ? 320 : 240);
    }

    [Fact]
    public void White_stays_white_and_pixels_finer_than_print_are_averaged()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(3000, 600, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.White);
        var path = Save(bitmap, "white.png", SKEncodedImageFormat.Png);

        using var seen = SKBitmap.Decode(PlateImage.Print(path, 50).Value!.Jpeg);

        seen.Width.Should().BeInRange(700, 1000, "3000 pixels on 50 mm are four times as many as are printed");
        seen.Pixels.Should().OnlyContain(pixel => pixel.Red == 255 && pixel.Green == 255 && pixel.Blue == 255);
    }

    [Fact]
    public void A_frame_whose_file_is_not_at_hand_or_cannot_be_read_says_which()
    {
        PlateImage.Find(_scratch.Path, LogSamples.Frame).Should().Be(((PlateFile?)null, PlateOmissionReason.NoFile));
        File.WriteAllText(_scratch.File(LogSamples.Frame.FileName), "no picture");
        PlateImage.Find(_scratch.Path, LogSamples.Frame).Should().Be(((PlateFile?)null, PlateOmissionReason.Unreadable));
    }

    [Theory]
    [InlineData(320, true)]
    [InlineData(640, false)]
    public void A_sidecar_tells_the_scale_of_a_picture_of_its_size_alone(int wide, bool holds)
    {
        var path = Quartered(1);
        File.WriteAllBytes(ScaleSidecar.PathBeside(path), ScaleSidecar.Write(
            new RecordedScale { MicrometresPerPixel = 12, BarLengthMicrometres = 500, Pixels = new PixelDimensions(wide, wide * 3 / 4) }, "500 µm"));

        var found = PlateImage.Find(_scratch.Path, LogSamples.Frame with { FileName = Path.GetFileName(path) }).File!;

        (found.Recorded is { HasBar: true, MicrometresPerPixel: 12 }).Should().Be(holds);
    }

    [Theory]
    [InlineData(1, ScaleBarCorner.BottomRight)]
    [InlineData(1, ScaleBarCorner.TopLeft)]
    [InlineData(6, ScaleBarCorner.BottomLeft)]
    [InlineData(7, ScaleBarCorner.TopRight)]
    public void The_bar_of_a_copy_that_was_parted_from_its_sidecar_is_found_again(ushort orientation, ScaleBarCorner corner)
    {
        var original = Quartered(orientation);
        var copy = _scratch.File("copies/turned.jpg");
        var made = Scaled.Make(new ScaleJob(original, copy, new PictureScale(12e-6, new ScaleBasis.Given()), corner)).Value!;
        File.Delete(made.Sidecar);

        PlateImage.Print(copy, 50, 12e-6).Value!.HasBar.Should().BeTrue();
        PlateImage.Print(original, 50, 12e-6).Value!.HasBar.Should().BeFalse("there is none in it");
        PlateImage.Print(copy, 50, 17e-6).Value!.HasBar.Should().BeFalse("at that scale it would have another length");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(128)]
    [InlineData(255)]
    public void No_bar_is_seen_where_all_is_of_one_colour(byte code)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(600, 400, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(new SKColor(code, code, code));

        PlateImage.Print(Save(bitmap, "plain.png", SKEncodedImageFormat.Png), 50, 12e-6).Value!.HasBar.Should().BeFalse();
    }

    [Fact]
    public void A_picture_a_few_pixels_high_is_printed_all_the_same()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(9000, 3, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.White);

        using var seen = SKBitmap.Decode(PlateImage.Print(Save(bitmap, "thread.png", SKEncodedImageFormat.Png), 50).Value!.Jpeg);

        seen.Height.Should().Be(1);
    }

    [Fact]
    public void What_is_transparent_shows_the_paper()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(60, 40, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        bitmap.Erase(SKColors.Transparent);

        using var seen = SKBitmap.Decode(PlateImage.Print(Save(bitmap, "cut-out.png", SKEncodedImageFormat.Png), 50).Value!.Jpeg);

        seen.Pixels.Should().OnlyContain(pixel => pixel.Red == 255 && pixel.Green == 255 && pixel.Blue == 255);
    }

    private string Quartered(ushort orientation)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(320, 240, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.White);
        using (var canvas = new SKCanvas(bitmap))
        using (var dark = new SKPaint { Color = new SKColor(20, 20, 20) })
        {
            canvas.DrawRect(0, 0, 160, 120, dark);
        }

        var path = Save(bitmap, "stored.jpg", SKEncodedImageFormat.Jpeg);
        new ExifBlock(true).Orientation(orientation).PutInto(path, _scratch.File("turned.jpg"));
        return _scratch.File("turned.jpg");
    }

    private string Save(SKBitmap bitmap, string name, SKEncodedImageFormat format)
    {
        using var data = bitmap.Encode(format, 95);
        File.WriteAllBytes(_scratch.File(name), data.ToArray());
        return _scratch.File(name);
    }
}
