using System.Buffers.Binary;
using System.Text;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Reads the cells of a page of a table.</summary>
internal static class PageCells
{
    public const byte Interior = 5;
    public const byte Leaf = 13;

    /// <summary>Kind of a page.</summary>
    public static byte Kind(ReadOnlySpan<byte> page, int number) => page.Length == 0 ? (byte)0 : page[Head(number)];

    /// <summary>Numbers of the pages below an inner one; those that cannot be are left out.</summary>
    public static List<int> Children(LogPages pages, int number)
    {
        var page = pages[number];
        var children = new List<int>();
        foreach (var cell in Cells(page, Head(number), 12))
        {
            if (cell + 4 <= page.Length)
            {
                children.Add(BinaryPrimitives.ReadInt32BigEndian(page[cell..]));
            }
        }

        children.Add(BinaryPrimitives.ReadInt32BigEndian(page[(Head(number) + 8)..]));
        return [.. children.Where(child => child > 1 && child <= pages.Count)];
    }

    /// <summary>The rows of a leaf; none in the place of each that cannot be read.</summary>
    public static List<(long RowId, object?[] Values)?> Rows(LogPages pages, int number)
    {
        var page = pages[number];
        var rows = new List<(long, object?[])?>();
        foreach (var cell in Cells(page, Head(number), 8))
        {
            rows.Add(Row(pages, page, cell));
        }

        return rows;
    }

    // The first page begins with the head of the file.
    private static int Head(int number) => number == 1 ? 100 : 0;

    private static List<int> Cells(ReadOnlySpan<byte> page, int head, int pointers)
    {
        var count = Math.Min(BinaryPrimitives.ReadUInt16BigEndian(page[(head + 3)..]), (page.Length - head - pointers) / 2);
        var cells = new List<int>();
        for (var i = 0; i < count; i++)
        {
            cells.Add(BinaryPrimitives.ReadUInt16BigEndian(page[(head + pointers + (2 * i))..]));
        }

        return cells;
    }

    private static (long RowId, object?[] Values)? Row(LogPages pages, ReadOnlySpan<byte> page, int cell)
    {
        try
        {
            var at = cell;
            var length = Varint(page, ref at);
            var row = Varint(page, ref at);
            return length is > 0 and < int.MaxValue && Payload(pages, page, at, (int)length) is { } payload ? (row, Values(payload)) : null;
        }
        catch (Exception error) when (error is ArgumentException or IndexOutOfRangeException or OverflowException or FormatException)
        {
            // Lengths that lead out of the page.
            return null;
        }
    }

    // What does not fit into the page goes on in a chain of others.
    private static byte[]? Payload(LogPages pages, ReadOnlySpan<byte> page, int at, int length)
    {
        var (largest, least) = (pages.PageSize - 35, ((pages.PageSize - 12) * 32 / 255) - 23);
        var local = length <= largest ? length : least + ((length - least) % (pages.PageSize - 4)) is var fits && fits <= largest ? fits : least;
        if ((long)length > (long)pages.Count * pages.PageSize)
        {
            return null;
        }

        var payload = new byte[length];
        page.Slice(at, local).CopyTo(payload);
        var (filled, next) = (local, local < length ? BinaryPrimitives.ReadInt32BigEndian(page[(at + local)..]) : 0);
        while (filled < length)
        {
            var more = next > 1 ? pages[next] : [];
            if (more.Length == 0)
            {
                return null;
            }

            var part = Math.Min(length - filled, pages.PageSize - 4);
            more.Slice(4, part).CopyTo(payload.AsSpan(filled));
            (filled, next) = (filled + part, BinaryPrimitives.ReadInt32BigEndian(more));
        }

        return payload;
    }

    private static object?[] Values(byte[] payload)
    {
        var at = 0;
        var head = (int)Varint(payload, ref at);
        var (values, body) = (new List<object?>(), head);
        while (at < head)
        {
            values.Add(Value(payload, Varint(payload, ref at), ref body));
        }

        return [.. values];
    }

    private static object? Value(byte[] payload, long kind, ref int at) => kind switch
    {
        0 => null,
        >= 1 and <= 4 => Whole(payload, (int)kind, ref at),
        5 => Whole(payload, 6, ref at),
        6 => Whole(payload, 8, ref at),
        7 => BitConverter.Int64BitsToDouble(Whole(payload, 8, ref at)),
        8 => 0L,
        9 => 1L,
        >= 13 when kind % 2 == 1 => Encoding.UTF8.GetString(Bytes(payload, (kind - 13) / 2, ref at)),
        >= 12 => Bytes(payload, (kind - 12) / 2, ref at).ToArray(),
        _ => throw new FormatException("No such kind of value."),
    };

    private static long Whole(byte[] payload, int length, ref int at)
    {
        var bytes = Bytes(payload, length, ref at);
        var value = (long)(sbyte)bytes[0];
        foreach (var next in bytes[1..])
        {
            value = (value << 8) | next;
        }

        return value;
    }

    private static ReadOnlySpan<byte> Bytes(byte[] payload, long length, ref int at)
    {
        var bytes = payload.AsSpan(at, checked((int)length));
        at += bytes.Length;
        return bytes;
    }

    // Seven bits a byte, the highest saying that more follow; a ninth byte has all eight.
    private static long Varint(ReadOnlySpan<byte> bytes, ref int at)
    {
        long value = 0;
        for (var i = 0; i < 8; i++)
        {
            var next = bytes[at++];
            value = (value << 7) | (uint)(next & 0x7F);
            if (next < 0x80)
            {
                return value;
            }
        }

        return (value << 8) | bytes[at++];
    }
}
