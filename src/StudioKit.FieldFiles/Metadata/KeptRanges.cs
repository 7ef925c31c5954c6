namespace StudioKit.FieldFiles.Metadata;

/// <summary>Which bytes of a file are kept; all others become zero.</summary>
internal sealed class KeptRanges
{
    private const int BufferSize = 1 << 16;
    private readonly List<(long Start, long End)> _ranges = [];
    private readonly SortedDictionary<long, byte[]> _patches = [];

    /// <summary>End of the last byte that is kept.</summary>
    public long End => _ranges.Count == 0 ? 0 : _ranges.Max(range => range.End);

    public void Keep(long start, long length, long fileLength)
    {
        var end = Math.Min(start + Math.Max(0, length), fileLength);
        if (start >= 0 && start < end)
        {
            _ranges.Add((start, end));
        }
    }

    /// <summary>Keeps a place of the file with other bytes than it has.</summary>
    public void Replace(long start, byte[] bytes)
    {
        _ranges.Add((start, start + bytes.Length));
        _patches[start] = bytes;
    }

    /// <summary>Whether a place of the file is kept in part.</summary>
    public bool Overlaps(long start, long length) => _ranges.Exists(range => range.Start < start + length && start < range.End);

    /// <summary>Copies the file up to the last byte that is kept.</summary>
    public void Copy(Stream source, Stream target)
    {
        var buffer = new byte[BufferSize];
        var merged = Merged();
        source.Position = 0;
        for (var (at, next) = (0L, 0); at < End;)
        {
            var count = source.ReadAtLeast(buffer.AsSpan(0, (int)Math.Min(BufferSize, End - at)), 1, throwOnEndOfStream: true);
            next = Blank(buffer.AsSpan(0, count), at, merged, next);
            foreach (var (start, bytes) in _patches)
            {
                Patch(buffer.AsSpan(0, count), at, start, bytes);
            }

            target.Write(buffer, 0, count);
            at += count;
        }
    }

    // Returns the range to go on with.
    private static int Blank(Span<byte> bytes, long at, List<(long Start, long End)> ranges, int first)
    {
        var (done, end, i) = (at, at + bytes.Length, first);
        while (done < end)
        {
            var (start, stop) = i < ranges.Count ? ranges[i] : (long.MaxValue, long.MaxValue);
            bytes[(int)(done - at)..(int)(Math.Clamp(start, done, end) - at)].Clear();
            if (stop > end)
            {
                break;
            }

            done = Math.Max(done, stop);
            i++;
        }

        return i;
    }

    private static void Patch(Span<byte> bytes, long at, long start, byte[] patch)
    {
        var (from, to) = (Math.Max(at, start), Math.Min(at + bytes.Length, start + patch.Length));
        if (from < to)
        {
            patch.AsSpan((int)(from - start), (int)(to - from)).CopyTo(bytes[(int)(from - at)..]);
        }
    }

    private List<(long Start, long End)> Merged()
    {
        var merged = new List<(long Start, long End)>();
        foreach (var range in _ranges.OrderBy(range => range.Start))
        {
            if (merged.Count > 0 && range.Start <= merged[^1].End)
            {
                merged[^1] = (merged[^1].Start, Math.Max(merged[^1].End, range.End));
            }
            else
            {
                merged.Add(range);
            }
        }

        return merged;
    }
}
