namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>The cyclic redundancy code of a PNG's chunks (ISO/IEC 15948 annex D).</summary>
internal static class PngChecksum
{
    private const uint Polynomial = 0xEDB88320;
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(value => Shifted((uint)value))];

    public static uint Of(ReadOnlySpan<byte> type, ReadOnlySpan<byte> data) => ~Add(Add(uint.MaxValue, type), data);

    private static uint Add(uint sum, ReadOnlySpan<byte> data)
    {
        foreach (var value in data)
        {
            sum = Table[(byte)(sum ^ value)] ^ (sum >> 8);
        }

        return sum;
    }

    private static uint Shifted(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            value = (value & 1) == 1 ? Polynomial ^ (value >> 1) : value >> 1;
        }

        return value;
    }
}
