using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>Reads a text that may be broken YAML line by line, well enough to know what stands where and what each thing is named.</summary>
internal sealed class LooseReader(string text, int position)
{
    private readonly LineMap _lines = new(text);
    private readonly HolderStack _holders = new();
    private readonly NamesSeen _names = new();
    private Spot? _spot;
    private bool _isSettled;

    /// <summary>What may stand at the place; none where nothing may.</summary>
    public Spot? Read()
    {
        var cursor = _lines.LineOf(position);
        for (var line = 0; line < _lines.Count;)
        {
            if (line == cursor && !_isSettled)
            {
                _spot = new SpotFinder(text, position, _lines, _holders.Copy(), _names).OnLine(line);
            }

            line = Take(line);
        }

        return _spot;
    }

    // Reads a line, and those that its value runs on over; returns the one after.
    private int Take(int line)
    {
        var (start, end) = (_lines.Start(line), _lines.End(line));
        var at = LooseLine.Skip(text, start, end);
        if (at == end || text[at] == '#')
        {
            return line + 1;
        }

        _holders.Leave(at - start, LooseLine.IsDash(text, at, end));
        while (LooseLine.IsDash(text, at, end))
        {
            _holders.EnterItem(at - start);
            at = LooseLine.Skip(text, at + 1, end);
        }

        if (at < end && text[at] is '{' or '[')
        {
            return Flow(at, _holders.Top.Section);
        }

        if (LooseLine.Colon(text, at, end) is { } colon)
        {
            return Pair(line, at, colon);
        }

        _holders.Top.IsFilled |= _holders.Top.IsItem && at < end && text[at] != '#';
        return line + 1;
    }

    private int Pair(int line, int at, int colon)
    {
        var key = LooseLine.Plain(text.AsSpan(at, colon - at));
        var section = _holders.Top.Section;
        var column = at - _lines.Start(line);
        _holders.EnterKey(column, key);
        var value = LooseLine.Skip(text, colon + 1, _lines.End(line));
        if (value < _lines.End(line) && text[value] is '{' or '[')
        {
            return Flow(value, _holders.Top.Section);
        }

        if (value < _lines.End(line) && text[value] is '|' or '>')
        {
            return BlockValue(line, column);
        }

        var written = text.AsSpan(value, LooseLine.ValueEnd(text, value, _lines.End(line)) - value);
        _holders.Top.IsFilled = written.Length > 0;
        _names.Add(section, key, written);
        return line + 1;
    }

    // The lines of a block value are words, whatever they look like.
    private int BlockValue(int line, int column)
    {
        var next = line + 1;
        while (next < _lines.Count && (_lines.IsBlank(next) || _lines.Indent(next) > column))
        {
            _isSettled |= next == _lines.LineOf(position) && !_lines.IsBlank(next);
            next++;
        }

        return next;
    }

    private int Flow(int open, ISection? section)
    {
        _holders.Top.IsFilled = true;
        var reader = new FlowReader(text, position, _lines, _names);
        var end = reader.Read(open, _holders.Top.Facts, section, _holders.Top.Column);
        if (reader.IsInside)
        {
            (_spot, _isSettled) = (reader.Spot, true);
        }

        return _lines.LineOf(end) + 1;
    }
}
