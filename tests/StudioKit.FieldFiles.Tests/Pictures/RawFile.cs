using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>Raw files after ISO 12234-2: a small picture first, and in directories of their own the samples behind a colour filter and a preview.</summary>
internal static class RawFile
{
    private const ushort Short = 3;
    private const ushort Long = 4;

    /// <summary>Writes one; without a preview where there is none to put in.</summary>
    public static byte[] Write(int wide, int high, byte[] preview)
    {
        // Head, three directories of at most eight fields, the small picture's sixteen bytes, and the preview.
        var (small, raw, shown, pixels) = (8, 200, 400, 600);
        var file = new byte[640 + preview.Length];
        byte[] head = [.. "II"u8, 42, 0, .. Little(small)];
        head.CopyTo(file, 0);
        Directory(
            file, small, (254, Long, 1), (256, Short, 2), (257, Short, 2), (258, Short, 8), (259, Short, 1), (262, Short, 1), (273, Long, pixels), (278, Long, 2), (279, Long, 4),
            (330, Long, preview.Length == 0 ? raw : 620));
        Directory(file, raw, (254, Long, 0), (256, Long, wide), (257, Long, high), (258, Short, 14), (259, Short, 1), (262, Short, 32803), (273, Long, pixels), (279, Long, 4));
        if (preview.Length > 0)
        {
            // Two sub-directories: their field holds where both are written.
            BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(small + 2 + (9 * 12) + 4), 2);
            Little(raw).CopyTo(file, 620);
            Little(shown).CopyTo(file, 624);
            Directory(file, shown, (254, Long, 1), (256, Long, 300), (257, Long, 200), (259, Short, 7), (262, Short, 6), (273, Long, 640), (279, Long, preview.Length));
            preview.CopyTo(file, 640);
        }

        return file;
    }

    private static byte[] Little(int value) => BitConverter.GetBytes(value);

    private static void Directory(byte[] file, int at, params (ushort Tag, ushort Kind, int Value)[] fields)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(at), (ushort)fields.Length);
        foreach (var (field, i) in fields.Select((field, i) => (field, i)))
        {
            var place = file.AsSpan(at + 2 + (12 * i));
            BinaryPrimitives.WriteUInt16LittleEndian(place, field.Tag);
            BinaryPrimitives.WriteUInt16LittleEndian(place[2..], field.Kind);
            BinaryPrimitives.WriteInt32LittleEndian(place[4..], 1);
            BinaryPrimitives.WriteInt32LittleEndian(place[8..], field.Value);
        }
    }
}
