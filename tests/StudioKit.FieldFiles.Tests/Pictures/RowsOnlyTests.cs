using BitMiracle.LibJpeg.Classic;
using BitMiracle.LibTiff.Classic;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Frames;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.FieldFiles.Tests.Scale;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>Pictures go through memory by rows: what is taken of it does not grow with their height.</summary>
public sealed class RowsOnlyTests : IDisposable
{
    private const int Width = 600;
    private const int Low = 1500;
    private const int High = 6500;
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    public static TheoryData<string> Kinds => [.. Writers.Keys];

    private static Dictionary<string, Action<string, int>> Writers { get; } = new(StringComparer.Ordinal)
    {
        ["a.png"] = (path, height) => File.WriteAllBytes(path, RawPng.Write(Width, height, 2, 8, interlaced: false, (_, _, _) => 250)),
        ["interlaced.png"] = (path, height) => File.WriteAllBytes(path, RawPng.Write(Width, height, 2, 16, interlaced: true, (_, _, _) => 60000)),
        ["baseline.jpg"] = (path, height) => FlatJpeg.Write(path, Width, height, [250, 128, 128]),
        ["one strip.tif"] = (path, height) => Tiff(height, new CodedTiff { StripRows = height, Packing = Compression.NONE }).Write(path, (_, _) => 250),
        ["one packed strip.tif"] = (path, height) => Tiff(height, new CodedTiff { StripRows = height }).Write(path, (_, _) => 250),
        ["tiles.tif"] = (path, height) => Tiff(height, new CodedTiff { IsTiled = true }).Write(path, (_, _) => 250),
    };

    /// <summary>Five thousand rows more are nine million samples more; an eighth of a byte for each is a hundredth part of what holding them would take.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_taller_picture_takes_no_more_memory(string kind)
    {
        Writers[kind](_scratch.File("low" + kind), Low);
        Writers[kind](_scratch.File("high" + kind), High);
        Use("low" + kind);

        var (low, high) = (Use("low" + kind), Use("high" + kind));

        (high - low).Should().BeLessThan((High - Low) * Width * 3 / 8);
    }

    [Theory]
    [InlineData(60_000, 20_000)]
    [InlineData(400_000, 1)]
    public void A_picture_beyond_all_bounds_is_refused_with_its_size(int width, int height)
    {
        byte[] png = RawPng.Write(1, 1, 0, 8, interlaced: false, (_, _, _) => 0);
        BitConverter.GetBytes(System.Net.IPAddress.HostToNetworkOrder(width)).CopyTo(png, 16);
        BitConverter.GetBytes(System.Net.IPAddress.HostToNetworkOrder(height)).CopyTo(png, 20);
        File.WriteAllBytes(_scratch.File("a.png"), png);

        var refused = FramePicture.Open(_scratch.File("a.png")).Diagnostics.Single();

        refused.Code.Should().Be("FLD006");
        refused.Message.Should().Contain($"{width} x {height}");
    }

    /// <summary>Scans that make a picture finer and finer cannot be put together row by row: two bytes a sample must be held (ISO/IEC 10918-1 annex G).</summary>
    [Fact]
    public void A_progressive_JPEG_too_large_for_memory_is_refused_with_what_it_would_take()
    {
        var jpeg = CodedJpeg.Write(16, 16, J_COLOR_SPACE.JCS_YCbCr, (1, 1), (_, _) => [1, 2, 3], set: coder => coder.jpeg_simple_progression());
        var header = jpeg.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xC2]);
        byte[] size = [0x3E, 0x80, 0x3E, 0x80];
        size.CopyTo(jpeg, header + 5);
        File.WriteAllBytes(_scratch.File("a.jpg"), jpeg);

        var refused = FramePicture.Open(_scratch.File("a.jpg")).Diagnostics.Single();

        // 16,000 by 16,000 pixels of three samples of two bytes.
        refused.Code.Should().Be("FLD006");
        refused.Message.Should().Contain("1536 MB").And.Contain("baseline");
    }

    private static CodedTiff Tiff(int height, CodedTiff tiff) => tiff with { Width = Width, Height = height };

    // Bytes that analysing and copying ask for on this thread, which decodes and writes.
    private long Use(string name)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        TestFrameFile.AnalyseBarePanel(_scratch.File(name)).Diagnostics.Should().BeEmpty();
        var copy = _scratch.File($"{before}{Path.GetExtension(name)}");
        Scaled.Make(new ScaleJob(_scratch.File(name), copy, new PictureScale(1e-5, new ScaleBasis.Given()))).Diagnostics.Should().BeEmpty();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
