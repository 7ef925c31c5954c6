using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>The one way by which words reach a terminal, a pipe or a file that output is sent to: what would steer a terminal is shown, not obeyed.</summary>
internal sealed class HarmlessWriter(TextWriter inner) : TextWriter
{
    // A pair of code units may come in two calls; half of it would look like a fault of its own.
    private char? _half;

    public override Encoding Encoding => inner.Encoding;

    /// <summary>Where our own codes for colour and for rewriting a line go.</summary>
    public TextWriter Raw => inner;

    public override void Write(char value)
    {
        if (char.IsHighSurrogate(value))
        {
            _half = value;
            return;
        }

        Write(value.ToString());
    }

    public override void Write(string? value)
    {
        var text = _half is { } half ? half + (value ?? "") : value ?? "";
        _half = null;
        inner.Write(HarmlessText.Of(Environment.NewLine == "\n" ? text : text.Replace(Environment.NewLine, "\n", StringComparison.Ordinal)));
    }

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    public override void WriteLine() => Write(Environment.NewLine);

    public override void WriteLine(string? value) => Write(value + Environment.NewLine);

    public override void Flush() => inner.Flush();
}
