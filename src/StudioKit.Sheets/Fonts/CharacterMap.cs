using System.Buffers.Binary;

namespace StudioKit.Sheets.Fonts;

/// <summary>From Unicode code point to glyph, by format 4 of the OpenType <c>cmap</c> table (the basic plane).</summary>
internal sealed class CharacterMap
{
    private const int UnicodePlatform = 0;
    private const int WindowsPlatform = 3;

    private readonly byte[] _file;
    private readonly int _start;
    private readonly int _segments;

    private CharacterMap(byte[] file, int start)
    {
        _file = file;
        _start = start;
        _segments = UInt16(start + 6) / 2;
    }

    public static CharacterMap Parse(byte[] file, int table)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(table + 2));
        for (var i = 0; i < count; i++)
        {
            var entry = file.AsSpan(table + 4 + (8 * i));
            var platform = BinaryPrimitives.ReadUInt16BigEndian(entry);
            var start = table + BinaryPrimitives.ReadInt32BigEndian(entry[4..]);
            var format = BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(start));
            if ((platform is UnicodePlatform or WindowsPlatform) && format == 4)
            {
                return new CharacterMap(file, start);
            }
        }

        throw new InvalidOperationException("The font has no Unicode character map of format 4.");
    }

    /// <summary>Glyph number, 0 where the font has none.</summary>
    public int Glyph(int codePoint)
    {
        var ends = _start + 14;
        var starts = ends + (2 * _segments) + 2;
        if (codePoint > 0xFFFF)
        {
            return 0;
        }

        // Segments stand in the order of their ends, and the last one ends at the end of the plane.
        var (low, high) = (0, _segments - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = UInt16(ends + (2 * middle)) < codePoint ? (middle + 1, high) : (low, middle);
        }

        return UInt16(starts + (2 * low)) <= codePoint ? GlyphInSegment(starts, low, codePoint) : 0;
    }

    private int GlyphInSegment(int starts, int segment, int codePoint)
    {
        var deltas = starts + (2 * _segments);
        var delta = UInt16(deltas + (2 * segment));
        var rangeOffsetAt = deltas + (2 * _segments) + (2 * segment);
        var rangeOffset = UInt16(rangeOffsetAt);
        if (rangeOffset == 0)
        {
            return (codePoint + delta) & 0xFFFF;
        }

        var glyph = UInt16(rangeOffsetAt + rangeOffset + (2 * (codePoint - UInt16(starts + (2 * segment)))));
        return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
    }

    private ushort UInt16(int offset) => BinaryPrimitives.ReadUInt16BigEndian(_file.AsSpan(offset));
}
