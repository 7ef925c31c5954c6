namespace StudioKit.Field;

/// <summary>The check sum of zip files and of a PNG's chunks (ISO/IEC 15948 annex D: polynomial 0xEDB88320, all ones to begin and to end with).</summary>
internal static class CheckSum
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(value => Steps((uint)value))];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var sum = uint.MaxValue;
        foreach (var value in bytes)
        {
            sum = Table[(byte)(sum ^ value)] ^ (sum >> 8);
        }

        return ~sum;
    }

    private static uint Steps(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            value = (value & 1) == 1 ? 0xEDB88320 ^ (value >> 1) : value >> 1;
        }

        return value;
    }
}
