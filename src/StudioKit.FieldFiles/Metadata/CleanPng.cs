using System.Buffers.Binary;
using System.Text;
using StudioKit.Field;

namespace StudioKit.FieldFiles.Metadata;

/// <summary>Copies a PNG without what it tells of itself; its coded picture stays byte for byte (ISO/IEC 15948).</summary>
internal static class CleanPng
{
    private static readonly byte[] Signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];

    // What the picture is made of, its colours and its resolution, each no longer than the standard lets it be [bytes].
    private static readonly Dictionary<string, int> Kept = new(StringComparer.Ordinal)
    {
        ["IHDR"] = 13,
        ["PLTE"] = 768,
        ["IDAT"] = int.MaxValue,
        ["IEND"] = 0,
        ["tRNS"] = 256,
        ["sRGB"] = 1,
        ["gAMA"] = 4,
        ["cHRM"] = 32,
        ["cICP"] = 4,
        ["iCCP"] = int.MaxValue,
        ["sBIT"] = 4,
        ["pHYs"] = 9,
        ["bKGD"] = 6,
    };

    /// <summary>Copies the picture up to its end.</summary>
    /// <param name="source">The file.</param>
    /// <param name="target">Where to; none to look alone.</param>
    /// <returns>What was taken out; none where the file is damaged.</returns>
    public static TellingMetadata? Copy(Stream source, Stream? target)
    {
        source.Position = 0;
        var head = new byte[8];
        if (source.ReadAtLeast(head, 8, throwOnEndOfStream: false) < 8 || !head.AsSpan().SequenceEqual(Signature))
        {
            return null;
        }

        target?.Write(Signature);
        var found = TellingMetadata.None;
        while (Chunk(source, head) is { } chunk)
        {
            Write(chunk, target ?? Stream.Null, ref found);
            if (chunk.Type == "IEND")
            {
                return found;
            }
        }

        return null;
    }

    private static void Write((string Type, byte[] Bytes) chunk, Stream target, ref TellingMetadata found)
    {
        if (Kept.TryGetValue(chunk.Type, out var most) && chunk.Bytes.Length - 12 <= most)
        {
            target.Write(chunk.Bytes);
            return;
        }

        using var block = new MemoryStream(chunk.Bytes[8..^4]);
        if (chunk.Type != "eXIf" || CleanTiff.OfBlock(block) is not { } clean)
        {
            found |= TextKind.Of(block.ToArray());
            return;
        }

        found |= clean.Found;
        using var written = new MemoryStream();
        clean.Write(written);
        WriteChunk(target, chunk.Bytes.AsSpan(4, 4), written.ToArray());
    }

    private static void WriteChunk(Stream target, ReadOnlySpan<byte> type, byte[] data)
    {
        var number = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        target.Write(number);
        byte[] body = [.. type, .. data];
        target.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, CheckSum.Of(body));
        target.Write(number);
    }

    private static (string Type, byte[] Bytes)? Chunk(Stream source, byte[] head)
    {
        if (source.ReadAtLeast(head, 8, throwOnEndOfStream: false) < 8)
        {
            return null;
        }

        var length = BinaryPrimitives.ReadInt32BigEndian(head);
        if (length < 0 || length > source.Length - source.Position - 4)
        {
            return null;
        }

        var bytes = new byte[12 + length];
        head.CopyTo(bytes, 0);
        source.ReadExactly(bytes, 8, length + 4);

        // A damaged length would let what follows ride along.
        return BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(8 + length)) != CheckSum.Of(bytes.AsSpan(4, 4 + length)) ? null : (Encoding.ASCII.GetString(head, 4, 4), bytes);
    }
}
