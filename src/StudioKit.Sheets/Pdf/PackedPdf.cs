using System.Buffers.Text;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using PdfSharp.Pdf;

namespace StudioKit.Sheets.Pdf;

/// <summary>Compresses the streams of a file that PDFsharp wrote plain, adds the structure of its text, and lays the cross-reference table anew.</summary>
/// <remarks>
/// PDFsharp's own compressed streams end without the checksum that RFC 1950 asks for; viewers forgive that, checkers do not.
/// </remarks>
internal static class PackedPdf
{
    private const int TableRow = 20;

    /// <summary>Compresses what was drawn on a page as soon as it is finished: a book's pages are ten times as long plain.</summary>
    public static void PackContent(PdfPage page)
    {
        foreach (var content in page.Contents)
        {
            content.Stream.Value = Deflate(content.Stream.Value);
            content.Elements.SetName("/Filter", "/FlateDecode");
        }
    }

    /// <summary>Packs a file.</summary>
    /// <param name="file">The file as PDFsharp saved it.</param>
    /// <param name="structure">The structure of its text.</param>
    public static byte[] Pack(ArraySegment<byte> file, PdfStructure structure)
    {
        var startKey = file.AsSpan().LastIndexOf("startxref"u8);
        var table = Number(file.AsSpan(startKey + "startxref\n".Length), out _);
        var trailer = table + file.AsSpan(table).IndexOf("trailer"u8);
        var offsets = ObjectOffsets(file, table, trailer);
        int[] order = [.. Enumerable.Range(0, offsets.Count).OrderBy(i => offsets[i])];

        using var packed = new MemoryStream(file.Count);
        packed.Write(file.AsSpan(0, offsets[order[0]]));
        var moved = new long[offsets.Count];
        for (var i = 0; i < order.Length; i++)
        {
            moved[order[i]] = packed.Position;
            var end = i + 1 < order.Length ? offsets[order[i + 1]] : table;
            if (order[i] != structure.RootNumber - 1)
            {
                PackObject(packed, file.AsSpan(offsets[order[i]], end - offsets[order[i]]));
            }
        }

        var added = new AddedObjects(packed, offsets.Count + 1);
        var root = structure.Write(added);
        moved[structure.RootNumber - 1] = packed.Position;
        Write(packed, $"{structure.RootNumber} 0 obj\n{root}\nendobj\n");
        WriteTable(packed, [.. moved, .. added.Offsets], Encoding.Latin1.GetString(file.AsSpan(trailer, startKey - trailer)));
        return packed.ToArray();
    }

    private static List<int> ObjectOffsets(ArraySegment<byte> file, int table, int trailer)
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

        table.Append(CultureInfo.InvariantCulture, $"{WithSize(trailer, offsets.Length + 1)}startxref\n{start}\n%%EOF\n");
        Write(packed, table.ToString());
    }

    /// <summary>The trailer, with how many objects there are now.</summary>
    private static string WithSize(string trailer, int size)
    {
        const string Key = "/Size ";
        var at = trailer.IndexOf(Key, StringComparison.Ordinal) + Key.Length;
        _ = Number(Encoding.Latin1.GetBytes(trailer[at..]), out var digits);
        return string.Create(CultureInfo.InvariantCulture, $"{trailer[..at]}{size}{trailer[(at + digits)..]}");
    }

    private static int Number(ReadOnlySpan<byte> text, out int digits) =>
        Utf8Parser.TryParse(text, out int number, out digits)
            ? number
            : throw new InvalidOperationException("The file is not laid out as PDFsharp lays it.");

    private static void Write(MemoryStream packed, string text) => packed.Write(Encoding.Latin1.GetBytes(text));
}
