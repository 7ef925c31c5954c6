using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>The pages of a log's file, as many as are left, with those of its journal in their place.</summary>
/// <remarks>
/// After the description of the file format that SQLite publishes. SQLite itself refuses a file whose first page, schema or length is damaged;
/// here each page stands for itself.
/// </remarks>
internal sealed class LogPages
{
    private const int UsualPageSize = 4096;
    private const int VersionAt = 60;
    private readonly byte[] _file;
    private readonly Dictionary<int, byte[]> _journal;

    private LogPages(byte[] file, byte[]? journal)
    {
        _file = file;
        PageSize = SizeOf(file);
        var read = journal is null ? new JournalPages([], 0, false) : JournalPages.Read(journal, PageSize);
        (_journal, JournalIsCut) = (read.Pages, read.IsCut);
        Count = Math.Max((file.Length + PageSize - 1) / PageSize, read.PageCount);
        Free = FreePages();
    }

    /// <summary>Version of the log that its head gives; 0 where there is no head.</summary>
    public int Version => this[1].Length < VersionAt + 4 ? 0 : BinaryPrimitives.ReadInt32BigEndian(this[1][VersionAt..]);

    /// <summary>Size of a page [bytes].</summary>
    public int PageSize { get; }

    /// <summary>Number of pages.</summary>
    public int Count { get; }

    /// <summary>Whether the journal holds something behind its last whole change.</summary>
    public bool JournalIsCut { get; }

    /// <summary>Pages that belong to no table, with what was taken out of the log perhaps still in them.</summary>
    public IReadOnlySet<int> Free { get; }

    /// <summary>A page, numbered from 1; filled up with zeros where the file ends within it, empty where it ends before.</summary>
    public ReadOnlySpan<byte> this[int number]
    {
        get
        {
            if (_journal.TryGetValue(number, out var page))
            {
                return page;
            }

            var start = (long)(number - 1) * PageSize;
            if (number < 1 || start >= _file.Length)
            {
                return [];
            }

            var left = _file.AsSpan((int)start, (int)Math.Min(PageSize, _file.Length - start));
            return left.Length == PageSize ? left : FilledUp(left);
        }
    }

    /// <summary>Reads a file with its journal, where there is one.</summary>
    /// <exception cref="IOException">A file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be read.</exception>
    public static LogPages Read(string path) => new(Contents(path), File.Exists(path + "-wal") ? Contents(path + "-wal") : null);

    // As much as the file says that it holds: what gives bytes without end says that it holds none.
    private static byte[] Contents(string path)
    {
        using var stream = File.OpenRead(path);
        var contents = new byte[stream.CanSeek ? stream.Length : 0];
        return contents[..stream.ReadAtLeast(contents, contents.Length, throwOnEndOfStream: false)];
    }

    private static int SizeOf(byte[] file)
    {
        var size = file.Length < 18 ? 0 : BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(16)) switch { 1 => 65536, var said => said };
        return size is >= 512 and <= 65536 && int.IsPow2(size) ? size : UsualPageSize;
    }

    private byte[] FilledUp(ReadOnlySpan<byte> left)
    {
        var page = new byte[PageSize];
        left.CopyTo(page);
        return page;
    }

    // A chain of trunks, each with the next one's number, how many leaves it has, and their numbers.
    private HashSet<int> FreePages()
    {
        var free = new HashSet<int>();
        var first = this[1];
        var next = first.Length >= 36 ? BinaryPrimitives.ReadInt32BigEndian(first[32..]) : 0;
        while (next > 1 && next <= Count && free.Add(next) && this[next] is { Length: > 8 } trunk)
        {
            var leaves = Math.Clamp(BinaryPrimitives.ReadInt32BigEndian(trunk[4..]), 0, (PageSize / 4) - 2);
            for (var leaf = 0; leaf < leaves; leaf++)
            {
                free.Add(BinaryPrimitives.ReadInt32BigEndian(trunk[(8 + (4 * leaf))..]));
            }

            next = BinaryPrimitives.ReadInt32BigEndian(trunk);
        }

        return free;
    }
}
