using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Where things are in a TIFF file, small or big (TIFF 6.0 section 2, and its form with offsets of eight bytes).</summary>
internal sealed class TiffLayout
{
    private const int MostDirectories = 64;
    private const int MostEntries = 4096;
    private const int MostValues = 4_000_000;
    private readonly Stream _stream;
    private readonly List<TiffDirectory> _directories = [];

    private TiffLayout(Stream stream, bool isBigEndian, bool isBig) => (_stream, IsBigEndian, IsBig) = (stream, isBigEndian, isBig);

    /// <summary>Whether numbers begin with their high byte.</summary>
    public bool IsBigEndian { get; }

    /// <summary>Whether offsets have eight bytes.</summary>
    public bool IsBig { get; }

    /// <summary>All directories: the chain, and those that they point to.</summary>
    public IReadOnlyList<TiffDirectory> Directories => _directories;

    /// <summary>Reads all directories that can be reached.</summary>
    /// <exception cref="InvalidDataException">The file is no TIFF, or its first directory is damaged.</exception>
    public static TiffLayout Read(Stream stream)
    {
        var head = new byte[16];
        stream.Position = 0;
        var length = stream.ReadAtLeast(head, 16, throwOnEndOfStream: false);
        var isBigEndian = head[0] == 'M';
        var version = isBigEndian ? head[3] : head[2];
        var layout = new TiffLayout(stream, isBigEndian, version == 43);
        if (length < 8 || head[0] != head[1] || head[0] is not ((byte)'I' or (byte)'M') || version is not (42 or 43))
        {
            throw new InvalidDataException("This is not a TIFF.");
        }

        layout.Follow(layout.IsBig ? layout.Number(head.AsSpan(8), 8) : layout.Number(head.AsSpan(4), 4));
        return layout._directories.Count > 0 ? layout : throw new InvalidDataException("The TIFF's directory is damaged.");
    }

    /// <summary>Whole numbers of a field; none where it is missing, damaged or holds something else.</summary>
    public long[] Values(TiffDirectory directory, ushort tag)
    {
        if (!directory.Entries.TryGetValue(tag, out var entry) || entry.Count > MostValues)
        {
            return [];
        }

        var size = Size(entry.Kind);
        var bytes = size == 0 ? [] : Bytes(entry.Values, size * (int)entry.Count);
        return bytes is null ? [] : [.. Enumerable.Range(0, size == 0 ? 0 : (int)entry.Count).Select(i => Number(bytes.AsSpan(i * size), size))];
    }

    /// <summary>First whole number of a field; none where it is missing.</summary>
    public long? Value(TiffDirectory directory, ushort tag) => Values(directory, tag) is [var first, ..] ? first : null;

    /// <summary>Writes a number the way the file does.</summary>
    public void Write(Span<byte> target, long value, int size)
    {
        for (var i = 0; i < size; i++)
        {
            target[IsBigEndian ? size - 1 - i : i] = (byte)(value >> (8 * i));
        }
    }

    // Bytes of one value of the whole kinds: byte, short, long, directory, and the long ones of big files.
    private static int Size(ushort kind) => kind switch
    {
        1 => 1,
        3 => 2,
        4 or 13 => 4,
        16 or 18 => 8,
        _ => 0,
    };

    private static int AnySize(ushort kind) => kind switch
    {
        1 or 2 or 6 or 7 => 1,
        3 or 8 => 2,
        4 or 9 or 11 or 13 => 4,
        _ => 8,
    };

    private void Follow(long first)
    {
        var waiting = new Queue<long>([first]);
        var seen = new HashSet<long>();
        while (waiting.TryDequeue(out var place) && _directories.Count < MostDirectories)
        {
            if (place <= 0 || !seen.Add(place) || ReadDirectory(place) is not { } directory)
            {
                continue;
            }

            _directories.Add(directory);
            waiting.Enqueue(directory.Next);
            foreach (var sub in Values(directory, TiffTags.SubDirectories).Take(MostDirectories))
            {
                waiting.Enqueue(sub);
            }
        }
    }

    private TiffDirectory? ReadDirectory(long place)
    {
        var (countSize, entrySize, offsetSize) = IsBig ? (8, 20, 8) : (2, 12, 4);
        if (Bytes(place, countSize) is not { } counted || Number(counted, countSize) is var count && count is < 1 or > MostEntries
            || Bytes(place + countSize, ((int)count * entrySize) + offsetSize) is not { } bytes)
        {
            return null;
        }

        var entries = new Dictionary<ushort, TiffEntry>();
        for (var i = 0; i < count; i++)
        {
            var entry = Entry(bytes.AsSpan(i * entrySize, entrySize), place + countSize + (i * entrySize), offsetSize);
            entries.TryAdd(entry.Tag, entry);
        }

        return new TiffDirectory(entries, Number(bytes.AsSpan((int)count * entrySize), offsetSize));
    }

    private TiffEntry Entry(ReadOnlySpan<byte> bytes, long place, int offsetSize)
    {
        var (tag, kind) = ((ushort)Number(bytes, 2), (ushort)Number(bytes[2..], 2));
        var count = Number(bytes[4..], offsetSize);
        var inside = place + 4 + offsetSize;

        // What fits into the room of an offset stands there itself.
        var isInside = count >= 0 && count <= offsetSize && count * AnySize(kind) <= offsetSize;
        return new TiffEntry(tag, kind, Math.Max(0, count), place, isInside ? inside : Number(bytes[(4 + offsetSize)..], offsetSize));
    }

    private byte[]? Bytes(long place, int length)
    {
        if (place < 0 || length < 0 || place > _stream.Length - length)
        {
            return null;
        }

        var bytes = new byte[length];
        _stream.Position = place;
        _stream.ReadExactly(bytes);
        return bytes;
    }

    private long Number(ReadOnlySpan<byte> bytes, int size) => (size, IsBigEndian) switch
    {
        (1, _) => bytes[0],
        (2, true) => BinaryPrimitives.ReadUInt16BigEndian(bytes),
        (2, false) => BinaryPrimitives.ReadUInt16LittleEndian(bytes),
        (4, true) => BinaryPrimitives.ReadUInt32BigEndian(bytes),
        (4, false) => BinaryPrimitives.ReadUInt32LittleEndian(bytes),
        (_, true) => BinaryPrimitives.ReadInt64BigEndian(bytes),
        _ => BinaryPrimitives.ReadInt64LittleEndian(bytes),
    };
}
