using System.Buffers.Binary;
using System.IO.Compression;
using StudioKit.Web.Engine;

namespace StudioKit.Web.Tests;

/// <summary>A picture of known truth: each place so many stops under clipping, encoded by the curve of IEC 61966-2-1.</summary>
/// <param name="width">Pixels across.</param>
/// <param name="height">Pixels down.</param>
/// <param name="stops">Stops under clipping at a pixel; 0 is white.</param>
internal sealed class TakenPicture(int width, int height, Func<int, int, double> stops) : IDecodedPicture
{
    public int Width => width;

    public int Height => height;

    public byte[] Head { get; init; } = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];

    public void Copy(int first, Span<byte> rgba)
    {
        for (var i = 0; i < rgba.Length / 4; i++)
        {
            rgba.Slice(4 * i, 3).Fill(Code(stops(i % width, first + (i / width))));
            rgba[(4 * i) + 3] = 255;
        }
    }

    /// <summary>The same as a PNG file (ISO/IEC 15948), made here by hand: RGB of 8 bits, no filter.</summary>
    public byte[] Png()
    {
        using var rows = new MemoryStream();
        using (var packed = new ZLibStream(rows, CompressionLevel.Fastest, leaveOpen: true))
        {
            var row = new byte[1 + (3 * width)];
            for (var y = 0; y < height; y++)
            {
                for (var x = 0; x < width; x++)
                {
                    row.AsSpan(1 + (3 * x), 3).Fill(Code(stops(x, y)));
                }

                packed.Write(row);
            }
        }

        var size = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(size, width);
        BinaryPrimitives.WriteInt32BigEndian(size.AsSpan(4), height);
        (size[8], size[9]) = (8, 2);
        return [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, .. Chunk("IHDR"u8, size), .. Chunk("IDAT"u8, rows.ToArray()), .. Chunk("IEND"u8, [])];
    }

    private static byte Code(double stops)
    {
        var light = Math.Pow(2, -stops);
        return (byte)Math.Round(255 * (light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055));
    }

    private static byte[] Chunk(ReadOnlySpan<byte> kind, ReadOnlySpan<byte> data)
    {
        byte[] chunk = [0, 0, 0, 0, .. kind, .. data, 0, 0, 0, 0];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(chunk.Length - 4), Check(chunk.AsSpan(4, data.Length + 4)));
        return chunk;
    }

    // The check sum of annex D.
    private static uint Check(ReadOnlySpan<byte> bytes)
    {
        var sum = uint.MaxValue;
        foreach (var one in bytes)
        {
            sum ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) != 0 ? (sum >> 1) ^ 0xEDB88320 : sum >> 1;
            }
        }

        return ~sum;
    }
}
