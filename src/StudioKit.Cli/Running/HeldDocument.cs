using System.IO.Compression;
using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Keeps a document until it is known whether it is the one to be printed; packed, as the list of a long log is far larger than the log.</summary>
internal sealed class HeldDocument : TextWriter
{
    private readonly MemoryStream _packed = new();
    private readonly StreamWriter _text;

    public HeldDocument() => _text = new StreamWriter(new DeflateStream(_packed, CompressionLevel.Fastest, leaveOpen: true), new UTF8Encoding(false), 1 << 14);

    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => _text.Write(value);

    public override void Write(string? value) => _text.Write(value);

    public override void Write(char[] buffer, int index, int count) => _text.Write(buffer, index, count);

    public override void Write(ReadOnlySpan<char> buffer) => _text.Write(buffer);

    /// <summary>Ends the document and hands it on, a portion at a time.</summary>
    public void HandOn(TextWriter target)
    {
        using var text = Reader();
        var (portion, waiting) = (new char[1 << 15], 0);
        for (var count = text.Read(portion, 0, portion.Length); count > 0; count = text.Read(portion, waiting, portion.Length - waiting))
        {
            // What belongs together is looked at together: a pair of code units, the end of a line.
            var whole = waiting + count;
            waiting = char.IsHighSurrogate(portion[whole - 1]) || portion[whole - 1] == '\r' ? 1 : 0;
            target.Write(portion, 0, whole - waiting);
            portion[0] = portion[whole - 1];
        }

        target.Write(portion, 0, waiting);
    }

    /// <summary>Ends the document and gives all of it.</summary>
    public string Whole()
    {
        using var text = Reader();
        return text.ReadToEnd();
    }

    protected override void Dispose(bool disposing)
    {
        _text.Dispose();
        _packed.Dispose();
        base.Dispose(disposing);
    }

    private StreamReader Reader()
    {
        _text.Dispose();
        _packed.Position = 0;
        return new StreamReader(new DeflateStream(_packed, CompressionMode.Decompress, leaveOpen: true), Encoding.UTF8);
    }
}
