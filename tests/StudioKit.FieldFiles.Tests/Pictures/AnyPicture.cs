using BitMiracle.LibJpeg.Classic;
using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>Random pictures of every format, size and depth, whole or spoilt.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Extension">What it is called.</param>
/// <param name="IsWhole">Whether nothing was done to it.</param>
internal sealed record AnyPicture(byte[] Bytes, string Extension, bool IsWhole)
{
    private static readonly Gen<(int Wide, int High)> Sizes =
        Gen.Frequency((1, Gen.Int[1, 9].Select(Gen.Int[1, 9])), (3, Gen.Int[10, 260].Select(Gen.Int[10, 200])), (1, Gen.Int[1, 4].Select(Gen.Int[1, 900]))).Select(size => (size.Item1, size.Item2));

    private static readonly Gen<(byte[] Bytes, string Extension)> Wholes = Gen.OneOf(Jpegs(), Pngs(), Tiffs(), Raws());

    /// <summary>Some whole, some cut short, some with bytes changed, some with bytes lost.</summary>
    public static readonly Gen<AnyPicture> Any = Gen.Select(Wholes, Gen.Int[0, 3], Gen.Double.Unit, Gen.Int[1, 12], Gen.Int[0, int.MaxValue]).Select((whole, spoiling, share, count, seed) =>
        new AnyPicture(Spoilt(whole.Bytes, spoiling, share, count, seed), whole.Extension, spoiling == 0));

    public override string ToString() => $"{Extension}, {(IsWhole ? "whole" : "spoilt")}: {Convert.ToBase64String(Bytes)}";

    private static Gen<(byte[] Bytes, string Extension)> Jpegs() =>
        Gen.Select(Sizes, Among((1, 1), (2, 2)), Gen.Int[1, 100], Among(1, 3, 4), Gen.Int[0, 3]).Select((size, sampling, quality, planes, kind) => (CodedJpeg.Write(
            size.Wide, size.High,
            planes == 1 ? J_COLOR_SPACE.JCS_GRAYSCALE : planes == 3 ? J_COLOR_SPACE.JCS_YCbCr : J_COLOR_SPACE.JCS_CMYK,
            planes == 1 ? (1, 1) : sampling,
            (x, y) => [.. Enumerable.Range(0, planes).Select(k => Level(x, y, k))],
            quality,
            coder =>
            {
                coder.Optimize_coding = kind == 1;
                coder.Restart_interval = kind == 2 ? 3 : 0;
                if (kind == 3)
                {
                    coder.jpeg_simple_progression();
                }
            }), ".jpg"));

    private static Gen<(byte[] Bytes, string Extension)> Pngs() =>
        Gen.Select(Sizes, Among([.. from kind in RawPng.Kinds from depth in kind.Depths select (kind.Colour, depth)]), Gen.Bool).Select((size, kind, interlaced) =>
            (RawPng.Write(size.Wide, size.High, kind.Colour, kind.depth, interlaced, (x, y, k) => Level(x, y, k) * 257), ".png"));

    private static Gen<(byte[] Bytes, string Extension)> Tiffs() =>
        Gen.Select(Sizes, Among(8, 16), Among(Compression.NONE, Compression.LZW, Compression.ADOBE_DEFLATE, Compression.PACKBITS), Gen.Bool, Gen.Bool, Gen.Int[1, 40])
            .Select((size, depth, packing, tiled, big, rows) => (InFile(new CodedTiff
            {
                Width = size.Wide,
                Height = size.High,
                Depth = depth,
                Packing = packing,
                IsTiled = tiled,
                IsBigEndian = big,
                StripRows = rows,
            }), ".tif"));

    private static Gen<(byte[] Bytes, string Extension)> Raws() =>
        Sizes.Select(size => (RawFile.Write(size.Wide * 4, size.High * 4, CodedJpeg.Write(size.Wide, size.High, J_COLOR_SPACE.JCS_GRAYSCALE, (1, 1), (x, y) => [Level(x, y, 0)])), ".raw"));

    private static byte[] InFile(CodedTiff tiff)
    {
        using var scratch = new ScratchFolder();
        tiff.Write(scratch.File("a.tif"), (x, y) => Level(x, y, 0));
        return File.ReadAllBytes(scratch.File("a.tif"));
    }

    private static Gen<T> Among<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static byte Level(int x, int y, int k) => (byte)((x * 5) ^ (y * (3 + k)) ^ (k * 77));

    private static byte[] Spoilt(byte[] whole, int spoiling, double share, int count, int seed)
    {
        var (chance, bytes) = (new Random(seed), (byte[])whole.Clone());
        switch (spoiling)
        {
            case 1:
                return bytes[..(int)(share * bytes.Length)];
            case 2:
                for (var i = 0; i < count; i++)
                {
                    bytes[chance.Next(bytes.Length)] ^= (byte)(1 << chance.Next(8));
                }

                return bytes;
            case 3:
                var start = chance.Next(bytes.Length);
                return [.. bytes[..start], .. bytes[Math.Min(bytes.Length, start + count)..]];
            default:
                return bytes;
        }
    }
}
