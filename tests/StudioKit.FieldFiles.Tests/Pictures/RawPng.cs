using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>PNGs of every depth, colour and order of rows, written straight from ISO/IEC 15948 and taken apart again.</summary>
internal static class RawPng
{
    public static readonly (int Colour, int Samples, int[] Depths)[] Kinds =
        [(0, 1, [1, 2, 4, 8, 16]), (2, 3, [8, 16]), (3, 1, [1, 2, 4, 8]), (4, 2, [8, 16]), (6, 4, [8, 16])];

    // Table 8: first column and row, steps across and down.
    private static readonly (int X, int Y, int Across, int Down)[] Passes =
        [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];

    /// <summary>Writes a picture, interlaced ones with each row as what it differs from the one above, others without a filter; a palette has as many entries as its depth allows, each another grey.</summary>
    public static byte[] Write(int width, int height, int colour, int depth, bool interlaced, Func<int, int, int, int> sample, params (string Type, byte[] Data)[] others)
    {
        using var file = new MemoryStream();
        file.Write([0x89, .. "PNG\r\n"u8, 0x1A, (byte)'\n']);
        Chunk(file, "IHDR", [.. Big(width), .. Big(height), (byte)depth, (byte)colour, 0, 0, (byte)(interlaced ? 1 : 0)]);
        foreach (var (type, data) in others)
        {
            Chunk(file, type, data);
        }

        if (colour == 3)
        {
            Chunk(file, "PLTE", [.. Enumerable.Range(0, 1 << depth).SelectMany(i => Enumerable.Repeat((byte)(255 - (i * 255 / ((1 << depth) - 1))), 3))]);
        }

        using var packed = new MemoryStream();
        using (var packer = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (var row in Rows(width, height, Samples(colour), depth, interlaced, sample))
            {
                packer.Write(row);
            }
        }

        // In several chunks, as writers do.
        foreach (var part in packed.ToArray().Chunk(Math.Max(1, (int)packed.Length / 3)))
        {
            Chunk(file, "IDAT", part);
        }

        Chunk(file, "IEND", []);
        return file.ToArray();
    }

    /// <summary>Samples of a file written so.</summary>
    public static int[,,] Samples(byte[] png)
    {
        var head = Chunks(png).First().Data;
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(head), BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(4)));
        var (depth, count) = (head[8], Samples(head[9]));
        using var unpacked = new ZLibStream(new MemoryStream([.. Chunks(png).Where(chunk => chunk.Type == "IDAT").SelectMany(chunk => chunk.Data)]), CompressionMode.Decompress);
        var samples = new int[width, height, count];
        foreach (var (x0, y0, across, down) in head[12] == 1 ? Passes : [(0, 0, 1, 1)])
        {
            var columns = (width - x0 + across - 1) / across;
            var above = new byte[((columns * count * depth) + 7) / 8];
            for (var y = y0; y < height && columns > 0; y += down)
            {
                unpacked.ReadByte().Should().Be(head[12] == 1 ? 2 : 0, "filters are kept");
                var row = new byte[above.Length];
                unpacked.ReadExactly(row);
                row = head[12] == 1 ? [.. row.Zip(above, (coded, up) => (byte)(coded + up))] : row;
                above = row;
                for (var i = 0; i < columns * count; i++)
                {
                    samples[x0 + (i / count * across), y, i % count] = depth == 16
                        ? BinaryPrimitives.ReadUInt16BigEndian(row.AsSpan(2 * i))
                        : (row[i * depth / 8] >> (8 - depth - (i * depth % 8))) & ((1 << depth) - 1);
                }
            }
        }

        return samples;
    }

    /// <summary>All chunks; each must have its right sum.</summary>
    public static IEnumerable<(string Type, byte[] Data)> Chunks(byte[] png)
    {
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 8 + length)).Should().Be(Sum(png.AsSpan(at + 4, 4 + length)));
            yield return (Encoding.ASCII.GetString(png, at + 4, 4), png[(at + 8)..(at + 8 + length)]);
            at += 12 + length;
        }
    }

    private static int Samples(int colour) => Kinds.First(kind => kind.Colour == colour).Samples;

    private static IEnumerable<byte[]> Rows(int width, int height, int count, int depth, bool interlaced, Func<int, int, int, int> sample)
    {
        foreach (var (x0, y0, across, down) in interlaced ? Passes : [(0, 0, 1, 1)])
        {
            var columns = (width - x0 + across - 1) / across;
            var above = new byte[1 + (((columns * count * depth) + 7) / 8)];
            for (var y = y0; y < height && columns > 0; y += down)
            {
                var row = new byte[1 + (((columns * count * depth) + 7) / 8)];
                for (var i = 0; i < columns * count; i++)
                {
                    var value = sample(x0 + (i / count * across), y, i % count) & ((1 << depth) - 1);
                    if (depth == 16)
                    {
                        BinaryPrimitives.WriteUInt16BigEndian(row.AsSpan(1 + (2 * i)), (ushort)value);
                    }
                    else
                    {
                        row[1 + (i * depth / 8)] |= (byte)(value << (8 - depth - (i * depth % 8)));
                    }
                }

                yield return interlaced ? [2, .. row.Zip(above, (value, up) => (byte)(value - up)).Skip(1)] : row;
                above = row;
            }
        }
    }

    private static byte[] Big(int value) => [(byte)(value >> 24), (byte)(value >> 16), (byte)(value >> 8), (byte)value];

    // Annex D, bit by bit.
    private static uint Sum(ReadOnlySpan<byte> data)
    {
        var sum = uint.MaxValue;
        foreach (var value in data)
        {
            sum ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                sum = (sum >> 1) ^ ((sum & 1) * 0xEDB88320);
            }
        }

        return ~sum;
    }

    private static void Chunk(Stream file, string type, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(type), .. data];
        file.Write([.. Big(data.Length), .. named, .. Big((int)Sum(named))]);
    }
}
