namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Samples of fewer than eight bits, packed from the high end of each byte.</summary>
internal static class PngSample
{
    public static int Get(ReadOnlySpan<byte> row, int place, int depth)
    {
        var bit = place * depth;
        return (row[bit >> 3] >> (8 - depth - (bit & 7))) & ((1 << depth) - 1);
    }

    public static void Set(Span<byte> row, int place, int depth, int value)
    {
        var bit = place * depth;
        var shift = 8 - depth - (bit & 7);
        var mask = ((1 << depth) - 1) << shift;
        row[bit >> 3] = (byte)((row[bit >> 3] & ~mask) | (value << shift));
    }
}
