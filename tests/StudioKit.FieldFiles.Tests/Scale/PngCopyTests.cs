using SkiaSharp;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Pictures;

namespace StudioKit.FieldFiles.Tests.Scale;

/// <summary>What of a PNG is the same in its copy, in every depth and colour, with its rows in order and interlaced.</summary>
public sealed class PngCopyTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private IReadOnlyList<string> _changes = [];

    public void Dispose() => _scratch.Dispose();

    public static TheoryData<int, int, bool> Kinds
    {
        get
        {
            var data = new TheoryData<int, int, bool>();
            foreach (var (colour, depth, interlaced) in from kind in RawPng.Kinds from depth in kind.Depths from interlaced in new[] { false, true } select (kind.Colour, depth, interlaced))
            {
                data.Add(colour, depth, interlaced);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_sample_away_from_the_bar_stays_as_it_was(int colour, int depth, bool interlaced)
    {
        var original = RawPng.Write(201, 133, colour, depth, interlaced, (x, y, k) => (x * 257) ^ (y * 4099) ^ (k * 91));

        var copy = Copy(original);

        var (before, after) = (RawPng.Samples(original), RawPng.Samples(copy));
        var changed = (from x in Enumerable.Range(0, 201)
                       from y in Enumerable.Range(0, 133)
                       where Enumerable.Range(0, before.GetLength(2)).Any(k => before[x, y, k] != after[x, y, k])
                       select (X: x, Y: y)).ToList();
        changed.Should().OnlyContain(pixel => pixel.X > 120 && pixel.Y > 100, "the bar lies at the bottom right");
        changed.Count.Should().BeGreaterThan(60);
        RawPng.Chunks(copy).First().Data.Should().Equal(RawPng.Chunks(original).First().Data, "size, depth, colours and order of rows are in the header");
    }

    /// <summary>The same pixels by another decoder, with the filters that a common encoder chooses.</summary>
    [Fact]
    public void A_filtered_picture_decodes_to_the_same_pixels_away_from_the_bar()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(300, 200, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        var pixels = bitmap.GetPixelSpan();
        for (var i = 0; i < pixels.Length; i++)
        {
            pixels[i] = (byte)((i / 7) + (i % 4 * 50) + (i / 1200));
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);

        using var copy = SKBitmap.Decode(Copy(data.ToArray()), bitmap.Info);

        for (var y = 0; y < 200; y++)
        {
            // The bar lies at the bottom right, six pixels above the lower edge; what is under it must be coded anew.
            for (var x = 0; x < (y is > 150 and < 197 ? 200 : 300); x++)
            {
                copy.GetPixel(x, y).Should().Be(bitmap.GetPixel(x, y));
            }
        }
    }

    /// <summary>A row is coded as what it differs from the one above it in its pass, up to eight rows higher; under a bar at the top most rows have one.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Rows_under_the_bar_stay_as_they_were_though_they_are_coded_by_those_above(bool interlaced)
    {
        var original = RawPng.Write(201, 133, 2, 8, interlaced, (x, y, k) => (x * 257) ^ (y * 4099) ^ (k * 91));

        var (before, after) = (RawPng.Samples(original), RawPng.Samples(Copy(original, ScaleBarCorner.TopLeft)));

        for (var (y, faults) = (40, 0); y < 133; y++)
        {
            faults += Enumerable.Range(0, 201).Count(x => before[x, y, 1] != after[x, y, 1]);
            faults.Should().Be(0, "row {0} lies under the bar", y);
        }
    }

    [Fact]
    public void Profile_text_and_what_else_holds_whatever_the_pixels_are_is_kept_and_nothing_that_no_longer_holds()
    {
        (string Type, byte[] Data)[] others = [("iCCP", [65, 0, 0, 1, 2]), ("pHYs", new byte[9]), ("tEXt", [67, 0, 68]), ("unKn", [1]), ("unKN", [2]), ("hIST", [0, 1])];

        var copy = Copy(RawPng.Write(200, 150, 2, 16, interlaced: false, (x, _, _) => x, others));

        RawPng.Chunks(copy).Select(chunk => chunk.Type).Except(["IHDR", "IDAT", "IEND"], StringComparer.Ordinal).Should().Equal("iCCP", "pHYs", "tEXt", "unKn");
        _changes.Should().ContainSingle().Which.Should().Contain("chunks unKN, hIST");
    }

    /// <summary>A colour may count as transparent; a bar of that colour would not be seen.</summary>
    [Theory]
    [InlineData(0, 8, new byte[] { 0, 0 })]
    [InlineData(0, 8, new byte[] { 0, 255 })]
    [InlineData(2, 8, new byte[] { 0, 0, 0, 0, 0, 0 })]
    public void A_bar_is_never_of_the_transparent_colour(int colour, int depth, byte[] transparent)
    {
        var light = 255 - transparent[1];
        var copy = Copy(RawPng.Write(200, 150, colour, depth, interlaced: false, (_, _, _) => light, ("tRNS", transparent)));

        var samples = RawPng.Samples(copy);

        var pixels = from x in Enumerable.Range(0, 200) from y in Enumerable.Range(0, 150) select Enumerable.Range(0, samples.GetLength(2)).Select(k => samples[x, y, k]).ToList();
        pixels.Should().NotContain(pixel => pixel.TrueForAll(sample => sample == transparent[1]));
        samples.Cast<int>().Should().Contain(transparent[1] == 0 ? 1 : 254);
    }

    /// <summary>Every row of an interlaced picture is put together from up to seven passes; Adam7 by table 8 of the standard, as the test writes it.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 2)]
    [InlineData(5, 9)]
    [InlineData(130, 67)]
    public void An_interlaced_picture_is_read_row_by_row(int width, int height)
    {
        File.WriteAllBytes(_scratch.File("a.png"), RawPng.Write(width, height, 2, 8, interlaced: true, (x, y, k) => k == 0 ? x : k == 1 ? y : 77));
        using var picture = FramePicture.Open(_scratch.File("a.png")).Value!;
        var (rows, faults) = (0, 0);

        picture.Read(band =>
        {
            for (var row = 0; row < band.Rows; row++, rows++)
            {
                for (var x = 0; x < width; x++)
                {
                    faults += band.Row(row).Slice(4 * x, 3).SequenceEqual((byte[])[(byte)x, (byte)(band.FirstRow + row), 77]) ? 0 : 1;
                }
            }
        }).Should().BeNull();

        (rows, faults).Should().Be((height, 0));
    }

    private byte[] Copy(byte[] original, ScaleBarCorner corner = ScaleBarCorner.BottomRight)
    {
        File.WriteAllBytes(_scratch.File("original.png"), original);
        var made = Scaled.Make(new ScaleJob(_scratch.File("original.png"), _scratch.File("copy.png"), new PictureScale(1e-5, new ScaleBasis.Given()), corner));
        made.Diagnostics.Should().BeEmpty();
        _changes = made.Value!.Changes;
        return File.ReadAllBytes(_scratch.File("copy.png"));
    }
}
