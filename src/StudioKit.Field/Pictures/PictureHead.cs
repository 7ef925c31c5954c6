using System.Buffers.Binary;

namespace StudioKit.Field.Pictures;

/// <summary>What the first bytes of a picture file say, where somebody else decodes its pixels.</summary>
/// <param name="Kind">What kind of file it is.</param>
/// <param name="Settings">What it says of how it was taken; as upright, since whoever decodes it turns it.</param>
/// <param name="BrightnessStep">Codes of 255 that lossy compression makes one of [1]; 0 where nothing was lost or nothing is known.</param>
public sealed record PictureHead(PictureKind Kind, FrameSettings Settings, double BrightnessStep)
{
    /// <summary>Reads the first bytes.</summary>
    /// <param name="head">The file's first bytes, as many as there are; 256 kB hold all that is looked for.</param>
    public static PictureHead Of(ReadOnlySpan<byte> head) => KindOf(head) switch
    {
        PictureKind.Jpeg => Jpeg(head),
        PictureKind.Png => Png(head),
        var kind => new PictureHead(kind, new FrameSettings(), 0),
    };

    private static PictureKind KindOf(ReadOnlySpan<byte> head) => head switch
    {
        [] => PictureKind.Empty,
        [0xFF, 0xD8, 0xFF, ..] => PictureKind.Jpeg,
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => PictureKind.Png,
        [(byte)'I', (byte)'I', 42 or 43, 0, ..] or [(byte)'M', (byte)'M', 0, 42 or 43, ..] => PictureKind.TiffOrRaw,
        [(byte)'I', (byte)'I', ..] or [(byte)'M', (byte)'M', ..] => PictureKind.Raw,
        [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', ..] => PictureKind.BaseMedia,
        _ => PictureKind.Other,
    };

    // Marker segments up to the first scan (ISO/IEC 10918-1 annex B): Exif stands in the first APP1 that says so, the brightness table in the first DQT.
    private static PictureHead Jpeg(ReadOnlySpan<byte> head)
    {
        var (settings, step) = (new FrameSettings(), 0.0);
        for (var at = 2; at + 4 <= head.Length && head[at] == 0xFF && head[at + 1] != 0xDA;)
        {
            if (head[at + 1] == 0xFF)
            {
                at++;
                continue;
            }

            int marker = head[at + 1], length = BinaryPrimitives.ReadUInt16BigEndian(head[(at + 2)..]);
            if (length < 2 || at + 2 + length > head.Length)
            {
                break;
            }

            var data = head.Slice(at + 4, length - 2);
            settings = marker == 0xE1 && data.StartsWith("Exif\0\0"u8) ? ExifBlock.Read(data[6..]) : settings;
            step = marker == 0xDB && step == 0 ? Step(data) : step;
            at += 2 + length;
        }

        return new PictureHead(PictureKind.Jpeg, settings, step);
    }

    // The mean of a block is its first coefficient over eight. Tables are 8-bit, or 16-bit where the high half of the first byte says so.
    private static double Step(ReadOnlySpan<byte> table) => table.Length < 3 ? 0 : (table[0] < 16 ? table[1] : BinaryPrimitives.ReadUInt16BigEndian(table[1..])) / 8.0;

    // Chunks up to the first that holds pixels; Exif has one of its own (third edition of ISO/IEC 15948).
    private static PictureHead Png(ReadOnlySpan<byte> head)
    {
        for (var at = 8; at + 12 <= head.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(head[at..]);
            var kind = head.Slice(at + 4, 4);
            if (length < 0 || length > head.Length - at - 12 || kind.SequenceEqual("IDAT"u8))
            {
                break;
            }

            if (kind.SequenceEqual("eXIf"u8))
            {
                return new PictureHead(PictureKind.Png, ExifBlock.Read(head.Slice(at + 8, length)), 0);
            }

            at += length + 12;
        }

        return new PictureHead(PictureKind.Png, new FrameSettings(), 0);
    }
}
