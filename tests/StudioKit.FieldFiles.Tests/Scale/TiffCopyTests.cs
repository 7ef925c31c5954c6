using BitMiracle.LibTiff.Classic;
using StudioKit.Field;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Pictures;

namespace StudioKit.FieldFiles.Tests.Scale;

/// <summary>What of a TIFF is the same in its copy, in every depth, colour, packing and order of its bytes.</summary>
public sealed class TiffCopyTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    public static TheoryData<string> Kinds => [.. All.Keys];

    private static Dictionary<string, CodedTiff> All { get; } = new(StringComparer.Ordinal)
    {
        ["strips"] = new(),
        ["not packed"] = new() { Packing = Compression.NONE },
        ["not packed, high byte first, two bytes"] = new() { Packing = Compression.NONE, IsBigEndian = true, Depth = 16 },
        ["one strip, not packed"] = new() { Packing = Compression.NONE, StripRows = 150, Depth = 16 },
        ["one strip"] = new() { StripRows = 150 },
        ["a strip for each row"] = new() { StripRows = 1 },
        ["predicted, two bytes"] = new() { Depth = 16, IsPredicted = true },
        ["predicted, high byte first, two bytes"] = new() { Depth = 16, IsPredicted = true, IsBigEndian = true },
        ["deflated"] = new() { Packing = Compression.ADOBE_DEFLATE, IsPredicted = true },
        ["packed bits"] = new() { Packing = Compression.PACKBITS },
        ["tiles"] = new() { IsTiled = true },
        ["tiles not packed"] = new() { IsTiled = true, Packing = Compression.NONE },
        ["tiles, two bytes, high byte first"] = new() { IsTiled = true, Depth = 16, IsBigEndian = true, IsPredicted = true },
        ["eight bytes an offset"] = new() { HasBigOffsets = true, Depth = 16 },
        ["eight bytes an offset, tiles"] = new() { HasBigOffsets = true, IsTiled = true },
        ["grey"] = new() { Samples = 1, Colour = Photometric.MINISBLACK },
        ["grey the other way round"] = new() { Samples = 1, Colour = Photometric.MINISWHITE, Depth = 16 },
        ["one bit"] = new() { Samples = 1, Colour = Photometric.MINISBLACK, Depth = 1 },
        ["four bits not packed"] = new() { Samples = 1, Colour = Photometric.MINISWHITE, Depth = 4, Packing = Compression.NONE },
        ["palette"] = new() { Samples = 1, Colour = Photometric.PALETTE },
        ["four inks"] = new() { Samples = 4, Colour = Photometric.SEPARATED },
        ["with alpha"] = new() { Samples = 4, Depth = 16 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_sample_away_from_the_bar_stays_as_it_was(string kind)
    {
        var tiff = All[kind];
        tiff.Write(_scratch.File("original.tif"), (x, y) => (byte)((x * 31) ^ (y * 7)));

        Copy().Diagnostics.Should().BeEmpty();

        var (before, after) = (tiff.Rows(_scratch.File("original.tif")), tiff.Rows(_scratch.File("copy.tif")));
        var bytes = before[0].Length;
        var changed = (from y in Enumerable.Range(0, tiff.Height)
                       from x in Enumerable.Range(0, bytes)
                       where before[y][x] != after[y][x]
                       select (X: x / (double)bytes, Y: y)).ToList();
        changed.Should().OnlyContain(place => place.X > 0.6 && place.Y > 110, "the bar lies at the bottom right");
        changed.Count.Should().BeGreaterThan(tiff.Depth < 8 ? 10 : 100);
    }

    /// <summary>Read back as red, green and blue, the bar is black on white and white on black whatever the samples mean.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_bar_stands_out(string kind)
    {
        var tiff = All[kind];
        foreach (var level in new byte[] { 0x00, 0xFF })
        {
            tiff.Write(_scratch.File("original.tif"), (_, _) => level);
            Copy().Diagnostics.Should().BeEmpty();

            var (original, copy) = (Levels("original.tif"), Levels("copy.tif"));

            original.Distinct().Should().ContainSingle();
            copy.Count(value => Math.Abs(value - original[0]) > 200).Should().BeGreaterThan(100, "a bar of fifty pixels by two and its letters are on {0}", original[0]);
            File.Delete(_scratch.File("copy.tif"));
        }
    }

    [Fact]
    public void What_cannot_be_packed_again_without_loss_is_refused_with_what_to_do()
    {
        new CodedTiff { Packing = Compression.JPEG, IsTiled = true }.Write(_scratch.File("original.tif"), (_, _) => 200);

        var refused = Copy().Diagnostics.Should().ContainSingle().Subject;

        refused.Code.Should().Be("FLD315");
        refused.Message.Should().Contain("JPEG").And.Contain("LZW");
        Directory.GetFiles(_scratch.Path).Should().ContainSingle();
    }

    private FieldResult<ScaledPicture> Copy() => Scaled.Make(
        new ScaleJob(_scratch.File("original.tif"), _scratch.File("copy.tif"), new PictureScale(1e-5, new ScaleBasis.Given())));

    private List<int> Levels(string name)
    {
        using var picture = FramePicture.Open(_scratch.File(name)).Value!;
        var levels = new List<int>();
        picture.Read(band => levels.AddRange(band.Rgba.Take(4 * band.Width * band.Rows).Where((_, i) => i % 4 == 1).Select(value => (int)value))).Should().BeNull();
        return levels;
    }
}
