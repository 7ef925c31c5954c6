namespace StudioKit.Kits.Editing;

/// <summary>The lines of a text as it lies in the file, with whatever line ends it has; counted from 0 here.</summary>
internal sealed class LineMap
{
    private static readonly char[] LineEnds = ['\r', '\n', '\f', '\u0085', '\u2028', '\u2029'];
    private readonly string _text;
    private readonly List<int> _starts = [];
    private readonly List<int> _ends = [];

    public LineMap(string text)
    {
        _text = text;
        var start = text.StartsWith('\uFEFF') ? 1 : 0;
        while (true)
        {
            var end = text.IndexOfAny(LineEnds, start);
            _starts.Add(start);
            _ends.Add(end < 0 ? text.Length : end);
            if (end < 0)
            {
                return;
            }

            start = text.AsSpan(end).StartsWith("\r\n") ? end + 2 : end + 1;
        }
    }

    public int Count => _starts.Count;

    public int Start(int line) => _starts[line];

    /// <summary>Where a line ends, before what parts it from the next.</summary>
    public int End(int line) => _ends[line];

    public string Line(int line) => _text[_starts[line].._ends[line]];

    public bool IsBlank(int line) => _text.AsSpan(_starts[line], _ends[line] - _starts[line]).IsWhiteSpace();

    /// <summary>Blanks before the first other character.</summary>
    public int Indent(int line)
    {
        var at = _starts[line];
        while (at < _ends[line] && _text[at] is ' ' or '\t')
        {
            at++;
        }

        return at - _starts[line];
    }

    /// <summary>The line that a place lies on.</summary>
    public int LineOf(int offset)
    {
        var found = _starts.BinarySearch(offset);
        return Math.Max(0, found >= 0 ? found : ~found - 1);
    }

    /// <summary>The place of a line and column counted from 1.</summary>
    public int Offset(int line, int column)
    {
        var at = Math.Clamp(line - 1, 0, Count - 1);
        return Math.Min(_starts[at] + Math.Max(0, column - 1), _ends[at]);
    }

    /// <summary>What new lines beside a line end with: what it ends with itself, else what the first line does.</summary>
    public string LineEnd(int line)
    {
        var at = line < Count - 1 ? line : 0;
        var end = at < Count - 1 ? _text[_ends[at].._starts[at + 1]] : "\n";
        return end is "\r\n" or "\r" ? end : "\n";
    }
}
