using BitMiracle.LibTiff.Classic;
using SkiaSharp;
using StudioKit.Field.Pictures;
using StudioKit.Field.Tests;
using StudioKit.FieldFiles.Frames;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Tests.Pictures;

public sealed class FramePictureTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>Size and date as a hex dump of the file shows them (SOF0 segment; tag 0x9003).</summary>
    [Fact]
    public void A_photograph_straight_from_a_camera_is_read_with_its_settings()
    {
        using var picture = FramePicture.Open(Path.Combine(AppContext.BaseDirectory, "Data", "photograph.jpg")).Value!;
        var rows = 0;

        picture.Read(band => rows += band.Rows).Should().BeNull();

        (picture.Width, picture.Height, rows).Should().Be((1278, 720, 720));
        picture.Settings.TakenLocal.Should().Be(new DateTime(2013, 5, 10, 15, 21, 35));
        picture.Settings.Camera.Should().NotBeEmpty();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Settings_are_read_in_either_byte_order(bool bigEndian)
    {
        var settings = Settings(new ExifBlock(bigEndian)
            .Camera("Fenland Optical", "Fenland Optical Mark 2").ExposureTime(1, 200).FNumber(160, 10).Iso(100).FocalLength(100, 1)
            .Taken("2026:05:09 14:03:20", "+02:00").Lens("Close-up 100 mm").Orientation(6));

        settings.Shutter!.Value.Seconds.Should().Be(1.0 / 200);
        settings.Aperture!.Value.Value.Should().Be(16);
        settings.Iso!.Value.Value.Should().Be(100);
        settings.FocalLength!.Value.Millimeters.Should().BeApproximately(100, 1e-9);
        settings.Taken.Should().Be(new DateTimeOffset(2026, 5, 9, 14, 3, 20, TimeSpan.FromHours(2)));
        settings.Orientation.Should().Be(PictureOrientation.TurnClockwise);
        (settings.Camera, settings.Lens).Should().Be(("Fenland Optical Mark 2", "Close-up 100 mm"));
        settings.Doubts.Should().BeEmpty();
    }

    [Fact]
    public void Settings_that_cannot_be_true_are_left_out_and_said()
    {
        // What a camera writes with an adapted lens and a clock that was never set.
        var settings = Settings(new ExifBlock(false)
            .FNumber(0, 1).ExposureTime(1, 0).Iso(0).FocalLength(0, 0).Taken("0000:00:00 00:00:00").Orientation(99));

        settings.Aperture.Should().BeNull();
        settings.Shutter.Should().BeNull();
        settings.Iso.Should().BeNull();
        settings.FocalLength.Should().BeNull();
        settings.TakenLocal.Should().BeNull();
        settings.Orientation.Should().Be(PictureOrientation.Upright);
        settings.Doubts.Should().HaveCount(6);
    }

    /// <summary>Where the stored top left corner comes to lie, after the table of Exif orientations (CIPA DC-008, tag 274).</summary>
    [Theory]
    [InlineData(1, "top left corner")]
    [InlineData(2, "top right corner")]
    [InlineData(3, "bottom right corner")]
    [InlineData(4, "bottom left corner")]
    [InlineData(5, "top left corner")]
    [InlineData(6, "top right corner")]
    [InlineData(7, "bottom right corner")]
    [InlineData(8, "bottom left corner")]
    public void A_rotated_frame_names_its_corners_as_seen(ushort orientation, string darkCorner)
    {
        // Dark in the stored top left corner.
        var sensor = new SensorModel(300, 200) { Margin = (u, v) => u < 0.3 && v < 0.3 ? -2 : 0.5 };
        var target = _scratch.File("turned.jpg");
        new ExifBlock(true).Orientation(orientation).PutInto(sensor.Save(_scratch.Path, "stored.jpg", 92), target);

        var analysis = TestFrameFile.AnalyseBarePanel(target).Value!;

        analysis.Regions.MaxBy(region => region.StopsMissing)!.Name.Should().Be(darkCorner);
        (analysis.Width > analysis.Height).Should().Be(orientation < 5);
    }

    [Fact]
    public void A_CMYK_picture_is_read()
    {
        // Inverted CMYK: 255 is no ink, so this is white with half the yellow.
        var path = _scratch.File("cmyk.jpg");
        FlatJpeg.Write(path, 64, 48, [255, 255, 128, 255], adobe: true);

        var pixel = FirstPixel(path);

        pixel.Red.Should().Be(255);
        pixel.Blue.Should().BeInRange(120, 136);
    }

    [Fact]
    public void Two_hundred_megapixels_are_read_in_bands()
    {
        var path = _scratch.File("wide.jpg");
        FlatJpeg.Write(path, 16000, 12500, [255]);

        TestFrameFile.AnalyseBarePanel(path).Value!.ClippedShare.Should().Be(1);
    }

    [Fact]
    public void A_truncated_picture_says_where_it_breaks_off()
    {
        var sensor = new SensorModel(600, 400) { Margin = (_, _) => -1 };
        var whole = File.ReadAllBytes(sensor.Save(_scratch.Path, "whole.jpg", 90));
        File.WriteAllBytes(_scratch.File("cut.jpg"), whole[..(whole.Length / 2)]);

        var result = TestFrameFile.AnalyseBarePanel(_scratch.File("cut.jpg"));

        result.Diagnostics.Should().ContainSingle().Which.Code.Should().Be("FLD005");
        result.Diagnostics[0].Message.Should().Contain("of its 400 rows");
    }

    [Fact]
    public void A_picture_cut_at_any_byte_of_its_head_gives_a_clear_error()
    {
        var sensor = new SensorModel(32, 24) { Margin = (_, _) => -1 };
        new ExifBlock(true).Iso(100).Orientation(6).PutInto(sensor.Save(_scratch.Path, "plain.jpg", 90), _scratch.File("whole.jpg"));
        var whole = File.ReadAllBytes(_scratch.File("whole.jpg"));
        for (var length = 0; length < whole.Length - 16; length += 7)
        {
            File.WriteAllBytes(_scratch.File("cut.jpg"), whole[..length]);

            TestFrameFile.Analyse(_scratch.File("cut.jpg")).Diagnostics.Should().NotBeEmpty($"only {length} bytes are left");
        }
    }

    [Theory]
    [InlineData("empty.jpg", "", "FLD002")]
    [InlineData("text.jpg", "not a picture", "FLD003")]
    [InlineData("missing.jpg", null, "FLD001")]
    public void What_is_no_picture_is_refused(string name, string? contents, string code)
    {
        if (contents is not null)
        {
            File.WriteAllText(_scratch.File(name), contents);
        }

        FramePicture.Open(_scratch.File(name)).Diagnostics.Should().ContainSingle().Which.Code.Should().Be(code);
    }

    [Fact]
    public async Task Of_large_pictures_that_are_in_memory_as_a_whole_one_is_read_at_a_time()
    {
        var jpeg = Path.Combine(AppContext.BaseDirectory, "Data", "photograph.jpg");
        using var first = new CodecRows(SKCodec.Create(jpeg), isLarge: true);
        using var second = new CodecRows(SKCodec.Create(jpeg), isLarge: true);
        using var small = new CodecRows(SKCodec.Create(jpeg));
        var row = new byte[4 * first.Width];
        first.Read(row, 1).Should().Be(1);
        var waiting = Task.Run(() => second.Read(new byte[row.Length], 1));

        small.Read(row, 1).Should().Be(1, "it is read by rows");
        (await Task.WhenAny(waiting, Task.Delay(200))).Should().NotBe(waiting);
        first.Dispose();

        (await waiting).Should().Be(1);
    }

    [Fact]
    public void A_folder_in_place_of_a_picture_is_told_with_the_form_that_works()
    {
        var fault = FramePicture.Open(_scratch.Path).Diagnostics.Should().ContainSingle().Subject;

        fault.Message.Should().Be("This is a folder.");
        fault.Hint.Should().Be($"Name the pictures in it, e.g. {Path.Combine(_scratch.Path, "*.jpg")}.");
    }

    [Fact]
    public void A_picture_that_is_not_there_is_told_without_the_systems_own_words() =>
        FramePicture.Open(_scratch.File("missing/a.jpg")).Diagnostics.Should().ContainSingle().Which.Message.Should().Be("There is no such file.");

    [Theory]
    [InlineData(false, Photometric.RGB)]
    [InlineData(true, Photometric.RGB)]
    public void A_TIFF_gives_the_pixels_that_were_put_in(bool tiled, Photometric photometric)
    {
        var path = _scratch.File("frame.tif");
        WriteTiff(path, tiled, photometric);
        using var picture = FramePicture.Open(path).Value!;
        var faults = 0;

        picture.Read(band =>
        {
            for (var row = 0; row < band.Rows; row++)
            {
                for (var x = 0; x < band.Width; x++)
                {
                    var pixel = band.Row(row).Slice(4 * x, 3);
                    faults += pixel[0] == (byte)x && pixel[1] == (byte)(band.FirstRow + row) && pixel[2] == 77 ? 0 : 1;
                }
            }
        }).Should().BeNull();

        (picture.Width, picture.Height, faults).Should().Be((100, 70, 0));
    }

    [Fact]
    public void A_PNG_gives_the_pixels_that_were_put_in()
    {
        var sensor = new SensorModel(90, 130) { Margin = (u, v) => -u - v };
        using var bitmap = sensor.Bitmap();

        FirstPixel(sensor.Save(_scratch.Path, "frame.png", 101)).Red.Should().Be(bitmap.GetPixel(0, 0).Red);
    }

    private static SKColor FirstPixel(string path)
    {
        using var picture = FramePicture.Open(path).Value!;
        var colour = SKColors.Transparent;
        picture.Read(band => colour = band.FirstRow == 0 ? new SKColor(band.Rgba[0], band.Rgba[1], band.Rgba[2]) : colour).Should().BeNull();
        return colour;
    }

    private static void WriteTiff(string path, bool tiled, Photometric photometric)
    {
        using var tiff = Tiff.Open(path, "w");
        tiff.SetField(TiffTag.IMAGEWIDTH, 100);
        tiff.SetField(TiffTag.IMAGELENGTH, 70);
        tiff.SetField(TiffTag.SAMPLESPERPIXEL, 3);
        tiff.SetField(TiffTag.BITSPERSAMPLE, 8);
        tiff.SetField(TiffTag.PHOTOMETRIC, photometric);
        tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
        tiff.SetField(TiffTag.COMPRESSION, Compression.LZW);
        if (tiled)
        {
            tiff.SetField(TiffTag.TILEWIDTH, 32);
            tiff.SetField(TiffTag.TILELENGTH, 32);
            for (var (row, tile) = (0, 0); row < 70; row += 32)
            {
                for (var column = 0; column < 100; column += 32, tile++)
                {
                    tiff.WriteEncodedTile(tile, Patch(column, row, 32, 32), 32 * 32 * 3);
                }
            }
        }
        else
        {
            tiff.SetField(TiffTag.ROWSPERSTRIP, 16);
            for (var row = 0; row < 70; row++)
            {
                tiff.WriteScanline(Patch(0, row, 100, 1), row);
            }
        }
    }

    private static byte[] Patch(int left, int top, int width, int height) =>
        [.. Enumerable.Range(0, width * height).SelectMany(i => new[] { (byte)(left + (i % width)), (byte)(top + (i / width)), (byte)77 })];

    private FrameSettings Settings(ExifBlock block)
    {
        FlatJpeg.Write(_scratch.File("flat.jpg"), 16, 16, [200]);
        block.PutInto(_scratch.File("flat.jpg"), _scratch.File("settings.jpg"));
        using var picture = FramePicture.Open(_scratch.File("settings.jpg")).Value!;
        return picture.Settings;
    }
}
