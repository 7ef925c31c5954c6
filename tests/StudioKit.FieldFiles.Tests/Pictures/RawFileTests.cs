using BitMiracle.LibJpeg.Classic;
using SkiaSharp;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Scale;

namespace StudioKit.FieldFiles.Tests.Pictures;

public sealed class RawFileTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Of_a_raw_file_the_preview_is_read_and_what_the_camera_recorded_is_known()
    {
        File.WriteAllBytes(_scratch.File("beetle.raw"), RawFile.Write(6016, 4016, Preview()));

        using var picture = FramePicture.Open(_scratch.File("beetle.raw")).Value!;

        (picture.Width, picture.Height, picture.Format).Should().Be((300, 200, PictureFormat.Jpeg));
        picture.Settings.IsPreview.Should().BeTrue();
        picture.Settings.RecordedPixels.Should().Be(new PixelDimensions(6016, 4016));
        var rows = 0;
        picture.Read(band => rows += band.Rows).Should().BeNull();
        rows.Should().Be(200);
    }

    /// <summary>36 mm over 6016 pixels at half life size are 11.97 µm; the preview has one pixel for twenty of them.</summary>
    [Fact]
    public void A_copy_of_a_preview_is_a_JPEG_with_a_bar_at_the_previews_scale()
    {
        var (raw, copy) = (RawFile.Write(6016, 4016, Preview()), _scratch.File("beetle.raw.jpg"));
        File.WriteAllBytes(_scratch.File("beetle.raw"), raw);
        var scale = FramePicture.With(
            _scratch.File("beetle.raw"), picture => PictureScaling.Of(picture, ScaleReference.OfFraming(0.036, 0.5, null), new PictureMaking())).Value!;

        var made = Scaled.Make(new ScaleJob(_scratch.File("beetle.raw"), copy, scale)).Value!;

        (scale.MetresPerPixel * 1e6).Should().BeApproximately(36000 / 6016.0 / 0.5 * 6016 / 300, 1e-9);
        made.Bar.Label.Should().Be("1 cm", "a quarter of 72 mm holds a centimetre");
        using var decoded = SKBitmap.Decode(copy);
        (decoded.Width, decoded.Height).Should().Be((300, 200));
        File.ReadAllBytes(_scratch.File("beetle.raw")).Should().Equal(raw);
    }

    [Theory]
    [InlineData(".xyz", "This .xyz file is a raw file")]
    public void A_raw_file_without_a_preview_is_called_by_its_name(string extension, string said)
    {
        var path = _scratch.File("beetle" + extension);
        File.WriteAllBytes(path, RawFile.Write(6016, 4016, []));
        Refusal(path).Should().Contain(said);

        // What else begins like a TIFF and is none is a raw file of some kind.
        File.WriteAllBytes(path, [.. "IIRX"u8, .. new byte[100]]);
        Refusal(path).Should().Contain(said);
    }

    [Fact]
    public void A_file_of_the_ISO_base_media_kind_is_called_so()
    {
        File.WriteAllBytes(_scratch.File("beetle.abc"), [0, 0, 0, 24, .. "ftypheic"u8, .. new byte[100]]);

        FramePicture.Open(_scratch.File("beetle.abc")).Diagnostics.Single().ToString().Should().Contain("This .abc file").And.Contain("HEIF").And.Contain("Save the picture as JPEG");
    }

    private static string Refusal(string path)
    {
        var refused = FramePicture.Open(path).Diagnostics.Single();
        refused.Code.Should().Be("FLD007");
        return refused.Message;
    }

    private static byte[] Preview() => CodedJpeg.Write(300, 200, J_COLOR_SPACE.JCS_YCbCr, (2, 2), (x, y) => [(byte)x, (byte)y, 120]);
}
