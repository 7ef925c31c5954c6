namespace StudioKit.Writing;

/// <summary>Files that nobody can make again: photographs, and the sidecars that hold the work on them.</summary>
internal static class OriginalFile
{
    private const int LongestMark = 12;

    /// <summary>Whether it is a sidecar by its name.</summary>
    public static bool IsSidecar(string path) => Path.GetExtension(path).Equals(".xmp", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether its first bytes are those of a photograph: JPEG (ISO/IEC 10918-1), PNG (ISO/IEC 15948), TIFF and the raw files made like it (ISO 12234-4), or ISO base media (ISO/IEC 14496-12).</summary>
    public static bool IsPicture(string path)
    {
        Span<byte> mark = stackalloc byte[LongestMark];
        using var stream = File.OpenRead(path);
        var start = mark[..stream.ReadAtLeast(mark, LongestMark, throwOnEndOfStream: false)];
        return start.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
            || start.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G'])
            || start.StartsWith("II*\0"u8)
            || start.StartsWith("MM\0*"u8)
            || (start.Length > 8 && start[4..].StartsWith("ftyp"u8));
    }
}
