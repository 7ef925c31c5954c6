using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Pages of the journal that is written ahead, up to its last whole change.</summary>
/// <param name="Pages">The latest state of each page.</param>
/// <param name="PageCount">Number of pages that the file has with them; 0 where the journal holds nothing.</param>
/// <param name="IsCut">Whether more follows that is no whole change.</param>
internal sealed record JournalPages(Dictionary<int, byte[]> Pages, int PageCount, bool IsCut)
{
    private const int HeadLength = 32;
    private const int FrameHeadLength = 24;
    private const uint Magic = 0x377F0682;

    /// <summary>Reads a journal; frames count as long as their running check sums are right.</summary>
    public static JournalPages Read(byte[] journal, int pageSize)
    {
        if (journal.Length < HeadLength || (Word(journal, 0) & ~1u) != Magic)
        {
            return new JournalPages([], 0, journal.Length > 0);
        }

        var bigEndian = (Word(journal, 0) & 1) != 0;
        var (pages, waiting, count, end) = (new Dictionary<int, byte[]>(), new Dictionary<int, byte[]>(), 0, HeadLength);
        var sums = Sum((0, 0), journal.AsSpan(0, 24), bigEndian);
        for (var at = HeadLength; at + FrameHeadLength + pageSize <= journal.Length; at += FrameHeadLength + pageSize)
        {
            var page = journal.AsSpan(at + FrameHeadLength, pageSize);
            sums = Sum(Sum(sums, journal.AsSpan(at, 8), bigEndian), page, bigEndian);
            var isSound = Word(journal, at + 8) == Word(journal, 16) && Word(journal, at + 12) == Word(journal, 20) && (Word(journal, at + 16), Word(journal, at + 20)) == sums;
            if (!isSound)
            {
                // A journal is written over from its start; what an earlier round left behind has other salts.
                return new JournalPages(pages, count, waiting.Count > 0 || (Word(journal, at + 8) == Word(journal, 16) && Word(journal, at + 12) == Word(journal, 20)));
            }

            waiting[(int)Word(journal, at)] = page.ToArray();
            if (Word(journal, at + 4) is > 0 and var size)
            {
                waiting.ToList().ForEach(pair => pages[pair.Key] = pair.Value);
                waiting.Clear();
                (count, end) = ((int)size, at + FrameHeadLength + pageSize);
            }
        }

        return new JournalPages(pages, count, end < journal.Length);
    }

    private static uint Word(byte[] bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));

    private static (uint First, uint Second) Sum((uint First, uint Second) sums, ReadOnlySpan<byte> bytes, bool bigEndian)
    {
        for (var at = 0; at + 8 <= bytes.Length; at += 8)
        {
            var (a, b) = bigEndian
                ? (BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]), BinaryPrimitives.ReadUInt32BigEndian(bytes[(at + 4)..]))
                : (BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]), BinaryPrimitives.ReadUInt32LittleEndian(bytes[(at + 4)..]));
            sums.First = unchecked(sums.First + a + sums.Second);
            sums.Second = unchecked(sums.Second + b + sums.First);
        }

        return sums;
    }
}
