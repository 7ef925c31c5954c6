using System.Buffers.Binary;
using System.Text;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Head of one chunk of a PNG.</summary>
/// <param name="Type">Its four letters.</param>
/// <param name="Start">Where its data begin in the file.</param>
/// <param name="Length">Bytes of data.</param>
internal readonly record struct PngChunk(string Type, long Start, int Length)
{
    public const string Header = "IHDR";
    public const string Pixels = "IDAT";
    public const string Palette = "PLTE";
    public const string Transparency = "tRNS";
    public const string End = "IEND";

    // Every PNG begins like this (clause 5.2).
    public static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];

    /// <summary>Heads of the chunks up to the end; what is damaged ends the list.</summary>
    public static IEnumerable<PngChunk> Of(Stream stream)
    {
        var head = new byte[8];
        for (var at = 8L; ;)
        {
            stream.Position = at;
            var length = stream.ReadAtLeast(head, 8, throwOnEndOfStream: false) < 8 ? -1 : BinaryPrimitives.ReadInt32BigEndian(head);
            if (length < 0 || at + 12 + length > stream.Length)
            {
                // Pixels that break off are still pixels up to there.
                length = (int)Math.Min(length, stream.Length - at - 8);
                if (length <= 0)
                {
                    yield break;
                }
            }

            yield return new PngChunk(Encoding.ASCII.GetString(head, 4, 4), at + 8, length);
            at += 12 + length;
        }
    }

    /// <summary>Its data.</summary>
    public byte[] Data(Stream stream)
    {
        var data = new byte[Length];
        stream.Position = Start;
        stream.ReadExactly(data);
        return data;
    }

    /// <summary>Writes a chunk.</summary>
    public static void Write(Stream target, string type, ReadOnlySpan<byte> data)
    {
        Span<byte> head = stackalloc byte[8];
        BinaryPrimitives.WriteInt32BigEndian(head, data.Length);
        Encoding.ASCII.GetBytes(type, head[4..]);
        target.Write(head);
        target.Write(data);
        Span<byte> sum = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(sum, PngChecksum.Of(head[4..], data));
        target.Write(sum);
    }
}
