using System.Globalization;
using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Hands lines on many at a time: a stream that is written through takes longer over each than it takes to make it.</summary>
/// <param name="inner">Where they go; it stays open.</param>
internal sealed class LinesTogether(TextWriter inner) : TextWriter(CultureInfo.InvariantCulture)
{
    private const int Enough = 1 << 14;
    private readonly StringBuilder _waiting = new();

    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value)
    {
        _waiting.Append(value);

        // Never within a line, whose end may be two characters.
        if (value == '\n' && _waiting.Length >= Enough)
        {
            HandOn();
        }
    }

    public override void Write(string? value) => Write(value.AsSpan());

    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        _waiting.Append(buffer);
        if (buffer is [.., '\n'] && _waiting.Length >= Enough)
        {
            HandOn();
        }
    }

    public override void WriteLine(string? value)
    {
        _waiting.Append(value);
        Write(Environment.NewLine);
    }

    protected override void Dispose(bool disposing)
    {
        HandOn();
        base.Dispose(disposing);
    }

    private void HandOn()
    {
        inner.Write(_waiting.ToString());
        _waiting.Clear();
    }
}
