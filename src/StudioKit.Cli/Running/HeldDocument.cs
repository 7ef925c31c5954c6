using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Keeps a document until it is known whether it is the one to be printed; a long one packed, as the list of a long log is far larger than the log.</summary>
internal sealed class HeldDocument() : TextWriter(CultureInfo.InvariantCulture)
{
    private const int Enough = 1 << 20;
    private readonly List<byte[]> _packed = [];
    private readonly StringBuilder _waiting = new();

    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => Write([value]);

    public override void Write(string? value) => Write(value.AsSpan());

    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        _waiting.Append(buffer);
        if (_waiting.Length >= Enough)
        {
            Pack();
        }
    }

    /// <summary>Hands the document on, a portion at a time.</summary>
    public void HandOn(TextWriter target)
    {
        foreach (var portion in Portions())
        {
            target.Write(portion);
        }
    }

    /// <summary>All of the document.</summary>
    public string Whole() => string.Concat(Portions());

    private IEnumerable<string> Portions() => _packed.Select(Unpacked).Append(_waiting.ToString());

    // What belongs together is looked at together: a pair of code units, the end of a line.
    private void Pack()
    {
        var count = _waiting.Length - (char.IsHighSurrogate(_waiting[^1]) || _waiting[^1] == '\r' ? 1 : 0);
        using var target = new MemoryStream();
        using (var text = new StreamWriter(new DeflateStream(target, CompressionLevel.Fastest, leaveOpen: true), new UTF8Encoding(false)))
        {
            text.Write(_waiting.ToString(0, count));
        }

        _packed.Add(target.ToArray());
        _waiting.Remove(0, count);
    }

    private static string Unpacked(byte[] packed)
    {
        using var text = new StreamReader(new DeflateStream(new MemoryStream(packed), CompressionMode.Decompress), Encoding.UTF8);
        return text.ReadToEnd();
    }
}
