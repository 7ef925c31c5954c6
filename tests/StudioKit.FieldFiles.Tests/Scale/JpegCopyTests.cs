using BitMiracle.LibJpeg.Classic;
using SkiaSharp;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Pictures;

namespace StudioKit.FieldFiles.Tests.Scale;

/// <summary>What of a JPEG is the same in its copy; the coefficients are read by another library than made the copy.</summary>
public sealed class JpegCopyTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    public static TheoryData<string, byte[]> Kinds => new()
    {
        { "4:4:4", Coded(J_COLOR_SPACE.JCS_YCbCr, (1, 1)) },
        { "4:2:2", Coded422() },
        { "4:2:0", Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2)) },
        { "red, green and blue", Coded(J_COLOR_SPACE.JCS_RGB, (1, 1)) },
        { "coarse", Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2), 20) },
        { "finest", Coded(J_COLOR_SPACE.JCS_YCbCr, (1, 1), 100) },
        { "codes of its own", Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2), 90, coder => coder.Optimize_coding = true) },
        { "restarts", Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2), 90, coder => coder.Restart_interval = 7) },
        { "progressive", Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2), 90, coder => coder.jpeg_simple_progression()) },
        { "progressive 4:4:4", Coded(J_COLOR_SPACE.JCS_YCbCr, (1, 1), 95, coder => coder.jpeg_simple_progression()) },
        { "grey", CodedJpeg.Write(333, 222, J_COLOR_SPACE.JCS_GRAYSCALE, (1, 1), (x, y) => [Pixel(x, y)[0]]) },
        { "grey of one colour, its codes the fewest", CodedJpeg.Write(333, 222, J_COLOR_SPACE.JCS_GRAYSCALE, (1, 1), (_, _) => [200], set: coder => coder.Optimize_coding = true) },
        { "four inks", CodedJpeg.Write(333, 222, J_COLOR_SPACE.JCS_YCCK, (2, 2), (x, y) => [.. Pixel(x, y), 250]) },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_block_away_from_the_bar_keeps_its_coefficients_and_the_rest_of_the_file_its_form(string kind, byte[] original)
    {
        var copy = Copy(original, out var scaled);

        foreach (var (before, after, plane) in CodedJpeg.Coefficients(original).Zip(CodedJpeg.Coefficients(copy), Enumerable.Range(0, 4)))
        {
            var (rows, columns) = (before.Length, before[0].Length);
            var changed = (from row in Enumerable.Range(0, rows)
                           from column in Enumerable.Range(0, columns)
                           where !before[row][column].AsSpan().SequenceEqual(after[row][column])
                           select (X: (column + 0.5) / columns, Y: (row + 0.5) / rows)).ToList();
            changed.Should().OnlyContain(block => block.X > 0.6 && block.Y > 0.7, "the bar of {0} lies at the bottom right", kind);
            changed.Count.Should().BeGreaterThan(plane == 0 && kind != "four inks" ? 5 : -1, "the bar must be there");
        }

        // Quantisation tables, frame header with its sampling and kind, application segments with colour profile and Exif.
        CodedJpeg.Segments(copy, 0xDB, 0xC0, 0xC1, 0xC2, 0xE0, 0xE1, 0xE2, 0xEE)
            .Should().BeEquivalentTo(CodedJpeg.Segments(original, 0xDB, 0xC0, 0xC1, 0xC2, 0xE0, 0xE1, 0xE2, 0xEE));
        scaled.Bar.Label.Should().Be("500 µm");
        scaled.Changes.Should().HaveCount(kind.StartsWith("progressive", StringComparison.Ordinal) ? 1 : 0, "only the order of scans may be another, and that is said");
        copy.Length.Should().BeInRange((int)(0.9 * original.Length), (int)(1.25 * original.Length) + 3000);
    }

    /// <summary>Decoded by a third library: white letters and bar in a black corner, black ones in a white corner, whatever the planes are.</summary>
    [Theory]
    [InlineData(J_COLOR_SPACE.JCS_YCbCr, 3)]
    [InlineData(J_COLOR_SPACE.JCS_RGB, 3)]
    [InlineData(J_COLOR_SPACE.JCS_GRAYSCALE, 1)]
    [InlineData(J_COLOR_SPACE.JCS_CMYK, 4)]
    [InlineData(J_COLOR_SPACE.JCS_YCCK, 4)]
    public void Bar_and_letters_stand_out_in_every_kind_of_colour(J_COLOR_SPACE colours, int planes)
    {
        foreach (var light in new byte[] { 20, 240 })
        {
            // Of four inks the last one takes the light: marked files hold what the inks leave, so the same code means the same.
            byte[] pixel = [.. Enumerable.Repeat(light, planes)];
            var copy = Copy(CodedJpeg.Write(400, 300, colours, (1, 1), (_, _) => planes == 4 ? [255, 255, 255, light] : pixel), out var scaled);
            using var decoded = SKBitmap.Decode(copy);
            var corner = (from y in Enumerable.Range(240, 60) from x in Enumerable.Range(250, 150) select (int)decoded.GetPixel(x, y).Green).ToList();

            scaled.IsWhite.Should().Be(light == 20);
            corner.Count(level => light == 20 ? level > 150 : level < 105).Should().BeGreaterThan(200 + 60, "the bar takes two hundred pixels and its letters as many again");

            // A bar of a hundred pixels and three high stands nine pixels above the lower edge and twelve left of the right one.
            var middle = (int)decoded.GetPixel(338, 290).Green;
            (light == 20 ? middle > 180 : middle < 75).Should().BeTrue("the bar itself is {0}", middle);
            decoded.GetPixel(10, 10).Green.Should().BeInRange((byte)(light - 4), (byte)(light + 4));
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    public void A_JPEG_that_breaks_off_is_refused_and_leaves_nothing(double share)
    {
        foreach (var original in new[] { Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2)), Coded(J_COLOR_SPACE.JCS_YCbCr, (2, 2), 90, coder => coder.jpeg_simple_progression()) })
        {
            File.WriteAllBytes(_scratch.File("cut.jpg"), original[..(int)(share * original.Length)]);

            var result = Scaled.Make(new ScaleJob(_scratch.File("cut.jpg"), _scratch.File("copy.jpg"), new PictureScale(1e-5, new ScaleBasis.Given())));

            result.Diagnostics.Should().ContainSingle().Which.Code.Should().BeOneOf("FLD004", "FLD005");
            Directory.GetFiles(_scratch.Path).Should().ContainSingle();
        }
    }

    private static byte[] Coded(J_COLOR_SPACE colours, (int Across, int Down) sampling, int quality = 90, Action<jpeg_compress_struct>? set = null) =>
        CodedJpeg.Write(333, 222, colours, sampling, Pixel, quality, set);

    // The other library does not make these.
    private static byte[] Coded422()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(333, 222, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var pixels = bitmap.GetPixelSpan();
        for (var i = 0; i < pixels.Length; i++)
        {
            pixels[i] = i % 4 == 3 ? (byte)255 : Pixel(i / 4 % 333, i / 4 / 333)[i % 4];
        }

        using var stream = new MemoryStream();
        using var pixmap = bitmap.PeekPixels();
        pixmap.Encode(stream, new SKJpegEncoderOptions(90, SKJpegEncoderDownsample.Downsample422, SKJpegEncoderAlphaOption.Ignore));
        return stream.ToArray();
    }

    // Busy enough that no two blocks are alike.
    private static byte[] Pixel(int x, int y) => [(byte)((x * 7) ^ (y * 3)), (byte)(128 + (100 * Math.Sin(x / 9.0) * Math.Cos(y / 5.0))), (byte)(x + y)];

    private byte[] Copy(byte[] original, out ScaledPicture scaled)
    {
        File.WriteAllBytes(_scratch.File("original.jpg"), original);
        File.Delete(_scratch.File("copy.jpg"));
        scaled = Scaled.Make(new ScaleJob(_scratch.File("original.jpg"), _scratch.File("copy.jpg"), new PictureScale(1e-5, new ScaleBasis.Given()))).Value!;
        return File.ReadAllBytes(_scratch.File("copy.jpg"));
    }
}
