using System.Buffers.Text;
using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace StudioKit.Sheets.Pdf;

/// <summary>Compresses the streams of a file that PDFsharp wrote plain, and lays the cross-reference table anew.</summary>
/// <remarks>
/// PDFsharp's own compressed streams end without the checksum that RFC 1950 asks for; viewers forgive that, checkers do not.
/// </remarks>
internal static class PackedPdf
{
    private const int TableRow = 20;

    public static byte[] Pack(byte[] file)
    {
        var startKey = file.AsSpan().LastIndexOf("startxref"u8);
        var table = Number(file.AsSpan(startKey + "startxref\n".Length), out _);
        var trailer = table + file.AsSpan(table).IndexOf("trailer"u8);
        var offsets = ObjectOffsets(file, table, trailer);
        var starts = offsets.Order().ToArray();

        using var packed = new MemoryStream();
        packed.Write(file, 0, starts[0]);
        var moved = new Dictionary<int, long>();
        for (var i = 0; i < starts.Length; i++)
        {
            moved[starts[i]] = packed.Position;
            var end = i + 1 < starts.Length ? starts[i + 1] : table;
            PackObject(packed, file.AsSpan(starts[i], end - starts[i]));
        }

        WriteTable(packed, [.. offsets.Select(offset => moved[offset])], Encoding.Latin1.GetString(file, trailer, startKey - trailer));
        return packed.ToArray();
    }

    private static List<int> ObjectOffsets(byte[] file, int table, int trailer)
    {
        // Two lines of head and the free entry of object 0, then rows of twenty bytes.
        var rows = (trailer - table) / TableRow;
        var first = trailer - ((rows - 1) * TableRow);
        return [.. Enumerable.Range(0, rows - 1).Select(row => Number(file.AsSpan(first + (row * TableRow)), out _))];
    }

    private static void PackObject(MemoryStream packed, ReadOnlySpan<byte> whole)
    {
        var keyword = whole.IndexOf("stream\n"u8);
        var head = keyword < 0 ? whole : whole[..keyword];
        if (keyword < 0 || head.IndexOf("/Filter"u8) >= 0 || head.IndexOf("/Metadata"u8) >= 0)
        {
            packed.Write(whole);
            return;
        }

        var at = head.IndexOf("/Length "u8) + "/Length ".Length;
        var length = Number(head[at..], out var digits);
        var start = keyword + "stream\n".Length;
        var body = Deflate(whole.Slice(start, length));
        packed.Write(head[..at]);
        Write(packed, string.Create(CultureInfo.InvariantCulture, $"{body.Length}/Filter/FlateDecode"));
        packed.Write(whole[(at + digits)..start]);
        packed.Write(body);
        packed.Write(whole[(start + length)..]);
    }

    private static byte[] Deflate(ReadOnlySpan<byte> plain)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            zlib.Write(plain);
        }

        return packed.ToArray();
    }

    private static void WriteTable(MemoryStream packed, long[] offsets, string trailer)
    {
        var start = packed.Position;
        var table = new StringBuilder();
        table.Append(CultureInfo.InvariantCulture, $"xref\n0 {offsets.Length + 1}\n0000000000 65535 f \n");
        foreach (var offset in offsets)
        {
            table.Append(CultureInfo.InvariantCulture, $"{offset:D10} 00000 n \n");
        }

        table.Append(CultureInfo.InvariantCulture, $"{trailer}startxref\n{start}\n%%EOF\n");
        Write(packed, table.ToString());
    }

    private static int Number(ReadOnlySpan<byte> text, out int digits) =>
        Utf8Parser.TryParse(text, out int number, out digits)
            ? number
            : throw new InvalidOperationException("The file is not laid out as PDFsharp lays it.");

    private static void Write(MemoryStream packed, string text) => packed.Write(Encoding.Latin1.GetBytes(text));
}
