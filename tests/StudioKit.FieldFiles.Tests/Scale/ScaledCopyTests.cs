using System.Xml.Linq;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using SkiaSharp;
using StudioKit.Field.Scale;
using StudioKit.Field.Tests;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Pictures;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Tests.Scale;

public sealed class ScaledCopyTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Exif_and_colour_profile_are_carried_over_byte_for_byte_and_the_original_stays()
    {
        var original = Portrait(light: 1, "portrait.jpg", orientation: 1);
        var before = File.ReadAllBytes(original);

        var copy = Scaled.Make(new ScaleJob(original, _scratch.File("scaled.jpg"), Given(1e-5))).Value!;

        File.ReadAllBytes(original).Should().Equal(before);
        Segments(copy.Path, 0xE1).Should().BeEquivalentTo(Segments(original, 0xE1));
        Segments(copy.Path, 0xE2).Should().BeEquivalentTo(Segments(original, 0xE2));
        ImageMetadataReader.ReadMetadata(copy.Path).OfType<ExifSubIfdDirectory>().Single()
            .GetString(ExifDirectoryBase.TagDateTimeOriginal)!.TrimEnd('\0').Should().Be("2026:05:09 14:03:20");
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(-4, true)]
    public void The_bar_has_the_colour_that_stands_out_and_the_length_it_says(double margin, bool white)
    {
        var original = Portrait(margin, "portrait.jpg", orientation: 1);

        var copy = Scaled.Make(new ScaleJob(original, _scratch.File("scaled.jpg"), Given(1e-5))).Value!;

        copy.IsWhite.Should().Be(white);
        using var bitmap = SKBitmap.Decode(copy.Path);
        LongestRun(bitmap, white).Should().BeInRange((int)copy.Bar.Pixels - 2, (int)copy.Bar.Pixels + 2);
    }

    /// <summary>The bar lies along the bottom as seen: decoding with the orientation applied must show it in the lower right quarter.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void The_bar_lies_in_the_corner_as_seen(ushort orientation)
    {
        var copy = Scaled.Make(new ScaleJob(Portrait(1, "portrait.jpg", orientation), _scratch.File("scaled.jpg"), Given(1e-5))).Value!;

        // The stored pixels of the bar, turned by the table in CIPA DC-008 for tag 274.
        using var codec = SKCodec.Create(copy.Path);
        var stored = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var rows = SKBitmap.Decode(codec, stored);
        var pixels = rows.Bytes;
        var dark = (from i in Enumerable.Range(0, pixels.Length / 4)
                    where pixels[(4 * i) + 1] < 60
                    select Seen(orientation, (double)(i % rows.Width) / rows.Width, (double)(i / rows.Width) / rows.Height)).ToList();

        dark.Should().NotBeEmpty();
        dark.Should().OnlyContain(place => place.X > 0.5 && place.Y > 0.7);
    }

    [Fact]
    public void A_sidecar_tells_the_scale_in_XMP()
    {
        var copy = Scaled.Make(new ScaleJob(Portrait(1, "portrait.jpg", 1), _scratch.File("scaled.jpg"), Given(5.625e-6))).Value!;

        var packet = File.ReadAllText(copy.Sidecar);
        packet.Should().StartWith("<?xpacket begin=").And.EndWith("<?xpacket end=\"w\"?>\n");
        var xmp = XDocument.Parse(packet);
        xmp.Descendants().Single(element => element.Name.LocalName == "MicrometresPerPixel").Value.Should().Be("5.625");
        xmp.Descendants().Single(element => element.Name.LocalName == "source").Value.Should().Be("portrait.jpg");
    }

    [Fact]
    public void An_original_is_never_written_over()
    {
        var original = Portrait(1, "portrait.jpg", 1);
        var before = File.ReadAllBytes(original);

        FluentActions.Invoking(() => Scaled.Make(new ScaleJob(original, original, Given(1e-5)))).Should().Throw<FileWritingException>();
        FluentActions.Invoking(() => Scaled.Make(new ScaleJob(original, _scratch.File("plain.jpg"), Given(1e-5)))).Should().Throw<FileWritingException>();

        File.ReadAllBytes(original).Should().Equal(before);
    }

    [Fact]
    public void A_photographers_sidecar_stays_and_the_scale_can_still_be_read_back()
    {
        File.WriteAllText(_scratch.File("scaled.jpg.xmp"), "<edits exposure='+1'/>");
        var job = new ScaleJob(Portrait(1, "portrait.jpg", 1), _scratch.File("scaled.jpg"), Given(1e-5));

        Scaled.Make(job).Value!.Sidecar.Should().Be(_scratch.File("scaled.jpg.scale.xmp"));
        Scaled.Make(job with { Scale = Given(2e-5) }).IsSound.Should().BeTrue();

        File.ReadAllText(_scratch.File("scaled.jpg.xmp")).Should().Be("<edits exposure='+1'/>");
        ScaleSidecar.ReadBeside(_scratch.File("scaled.jpg"))!.MicrometresPerPixel.Should().Be(20);
    }

    [Fact]
    public void A_sidecar_of_ours_that_a_photographer_went_on_with_is_theirs()
    {
        var original = Portrait(1, "portrait.jpg", 1);
        Scaled.Make(new ScaleJob(original, _scratch.File("scaled.jpg"), Given(1e-5))).IsSound.Should().BeTrue();
        File.AppendAllText(_scratch.File("scaled.jpg.xmp"), "<!-- exposure +1 -->");

        Scaled.Make(new ScaleJob(original, _scratch.File("scaled.jpg"), Given(2e-5))).IsSound.Should().BeTrue();

        File.ReadAllText(_scratch.File("scaled.jpg.xmp")).Should().EndWith("<!-- exposure +1 -->");
        ScaleSidecar.ReadBeside(_scratch.File("scaled.jpg"))!.MicrometresPerPixel.Should().Be(20);
    }

    [Fact]
    public void A_PNG_stays_a_PNG_and_keeps_its_pixels_away_from_the_bar()
    {
        var sensor = new SensorModel(300, 200) { Margin = (u, v) => -u - v };
        var original = sensor.Save(_scratch.Path, "portrait.png", 101);

        var copy = Scaled.Make(new ScaleJob(original, _scratch.File("scaled.png"), Given(1e-5))).Value!;

        using var before = SKBitmap.Decode(original);
        using var after = SKBitmap.Decode(copy.Path);
        after.GetPixel(20, 20).Should().Be(before.GetPixel(20, 20));
    }

    [Fact]
    public async Task A_batch_gives_one_result_a_picture_in_order_and_tells_how_far_it_is()
    {
        var original = Portrait(1, "portrait.jpg", 1);
        var told = new Counter();
        ScaleJob[] jobs = [.. Enumerable.Range(0, 20).Select(i => new ScaleJob(i == 7 ? _scratch.File("missing.jpg") : original, _scratch.File($"{i}.jpg"), Given(1e-5)))];
        using var files = FileBatch.Open(ScaleBatch.Files(jobs));

        var results = await ScaleBatch.RunAsync(jobs, files, told);

        results.Select(result => result.IsSound).Should().Equal(Enumerable.Range(0, 20).Select(i => i != 7));
        told.Reports.Should().Be(20);
        files.Commit().Should().HaveCount(38, "each of the nineteen has a sidecar");
    }

    private static PictureScale Given(double metresPerPixel) => new(metresPerPixel, new ScaleBasis.Given());

    private static List<byte[]> Segments(string path, byte marker)
    {
        using var stream = File.OpenRead(path);
        return [.. JpegSegment.ReadHeader(stream).Where(segment => segment.Marker == marker).Select(segment => segment.Data)];
    }

    private static (double X, double Y) Seen(ushort orientation, double x, double y) => orientation switch
    {
        2 => (1 - x, y),
        3 => (1 - x, 1 - y),
        4 => (x, 1 - y),
        5 => (y, x),
        6 => (1 - y, x),
        7 => (1 - y, 1 - x),
        8 => (y, 1 - x),
        _ => (x, y),
    };

    private static int LongestRun(SKBitmap bitmap, bool white)
    {
        var (longest, pixels) = (0, bitmap.Bytes);
        for (var y = 0; y < bitmap.Height; y++)
        {
            for (var (x, run) = (0, 0); x < bitmap.Width; x++)
            {
                var green = pixels[(4 * ((y * bitmap.Width) + x)) + 1];
                run = (white ? green > 200 : green < 60) ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
        }

        return longest;
    }

    private string Portrait(double light, string name, ushort orientation)
    {
        // With a colour profile, as a camera's file has one: encoded through a colour space.
        using var bitmap = new SensorModel(600, 400) { Margin = (_, _) => light }.Bitmap();
        using var coloured = new SKBitmap(bitmap.Info.WithColorSpace(SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3)));
        bitmap.GetPixelSpan().CopyTo(coloured.GetPixelSpan());
        using var data = coloured.Encode(SKEncodedImageFormat.Jpeg, 92);
        File.WriteAllBytes(_scratch.File("plain.jpg"), data.ToArray());
        var path = _scratch.File(name);
        new ExifBlock(false).Taken("2026:05:09 14:03:20", "+01:00").Iso(100).Orientation(orientation).PutInto(_scratch.File("plain.jpg"), path);
        return path;
    }

    private sealed class Counter : IProgress<ScaleBatchProgress>
    {
        private int _reports;

        public int Reports => _reports;

        public void Report(ScaleBatchProgress value) => Interlocked.Increment(ref _reports);
    }
}
