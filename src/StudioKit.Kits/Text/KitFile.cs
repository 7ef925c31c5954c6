namespace StudioKit.Kits.Text;

/// <summary>Reads files from disk without trusting their size.</summary>
internal static class KitFile
{
    /// <summary>Reads a file, but no more than one byte beyond the limit, which is enough to see that it is too large.</summary>
    public static byte[] ReadBounded(string path, int limit)
    {
        using var stream = File.OpenRead(path);
        return ReadBounded(stream, limit);
    }

    /// <summary>Reads what comes in, but no more than one byte beyond the limit.</summary>
    public static byte[] ReadBounded(Stream stream, int limit)
    {
        var buffer = new byte[limit + 1];
        var count = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return buffer.AsSpan(0, count).ToArray();
    }
}
