using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>Reads what stands between brackets and braces, also where one of them is not closed yet.</summary>
internal sealed class FlowReader(string text, int position, LineMap lines, NamesSeen names)
{
    private readonly Stack<FlowFrame> _frames = new();

    /// <summary>Whether the place lies between the brackets.</summary>
    public bool IsInside { get; private set; }

    /// <summary>What may stand at the place; none where nothing may.</summary>
    public Spot? Spot { get; private set; }

    /// <summary>Reads on from the first bracket.</summary>
    /// <param name="open">The bracket.</param>
    /// <param name="facts">What its key takes.</param>
    /// <param name="section">The section that it is, where it is a brace.</param>
    /// <param name="column">Blanks before its key: no line of it begins there or before.</param>
    /// <returns>Behind the bracket that closes it; the end of the line before what cannot belong to it, where none does.</returns>
    public int Read(int open, KeyFacts? facts, ISection? section, int column)
    {
        Enter(open, facts, section);
        var line = lines.LineOf(open);
        var at = open + 1;
        while (at < text.Length)
        {
            Look(at, at);
            if (at == lines.End(line))
            {
                if (Next(line, column) is not { } next)
                {
                    return at;
                }

                (line, at) = (next, lines.Start(next));
                continue;
            }

            at = Step(at, lines.End(line));
            if (_frames.Count == 0)
            {
                return at;
            }
        }

        Look(at, at);
        return Math.Min(at, text.Length);
    }

    // The next line, unless what is written there stands too far out to belong here.
    private int? Next(int line, int column)
    {
        var says = line + 1;
        while (says < lines.Count && lines.IsBlank(says))
        {
            says++;
        }

        return says < lines.Count && (lines.Indent(says) > column || text[lines.Start(says) + lines.Indent(says)] is ']' or '}') ? line + 1 : null;
    }

    private int Step(int at, int end)
    {
        var frame = _frames.Peek();
        switch (text[at])
        {
            case '"' or '\'' when LooseLine.Skip(text, frame.Start, at) == at:
                var behind = LooseLine.Quoted(text, at, end);
                Look(at + 1, behind - (behind < end || text[behind - 1] == text[at] ? 1 : 0));
                return behind;
            case '#' when LooseLine.IsComment(text, at, 0):
                IsInside |= position > at && position <= end;
                return end;
            case '{' or '[':
                var facts = frame is { IsMap: true, Key: { } inner } ? frame.Section?.Find(inner) : frame.Facts;
                Enter(at, facts, frame.IsMap && facts is { IsList: true } ? null : facts?.Inner);
                break;
            case '}' or ']':
                End(frame, at);
                _frames.Pop();
                break;
            case ',':
                End(frame, at);
                (frame.Key, frame.Start) = (null, at + 1);
                break;
            case ':' when frame is { IsMap: true, Key: null } && (at + 1 >= end || text[at + 1] is ' ' or '\t' or ',' or '}'):
                frame.Key = LooseLine.Plain(text.AsSpan(frame.Start, at - frame.Start));
                frame.Keys.Add((Skip(frame.Start, at), frame.Key));
                frame.Start = at + 1;
                break;
        }

        return at + 1;
    }

    private void Enter(int at, KeyFacts? facts, ISection? section) => _frames.Push(new FlowFrame(facts, text[at] == '{' ? section : null, text[at] == '{', at + 1));

    private void End(FlowFrame frame, int at) => names.Add(frame.Section, frame.Key, text.AsSpan(frame.Start, at - frame.Start));

    private int Skip(int start, int end)
    {
        while (start < end && char.IsWhiteSpace(text[start]))
        {
            start++;
        }

        return start;
    }

    // Notes what may stand at the place, if it is reached.
    private void Look(int from, int to)
    {
        if (IsInside || position < from || position > to)
        {
            return;
        }

        IsInside = true;
        var frame = _frames.Peek();
        var start = Skip(frame.Start, position);
        var isKey = frame is { IsMap: true, Key: null };
        var facts = frame is { IsMap: true, Key: { } key } ? frame.Section?.Find(key) : frame.Facts;
        Spot = isKey ? Word(frame, start) : facts is null ? null : Value(frame, start, facts);
    }

    private Spot Word(FlowFrame frame, int start)
    {
        var end = End(start, stopsAtColon: true);
        return new Spot(text, position, start, end) { Section = frame.Section, Taken = frame.Keys, IsFlow = true, HasColon = end < text.Length && text[end] == ':', Names = names };
    }

    private Spot Value(FlowFrame frame, int start, KeyFacts facts)
    {
        var mark = start < position && text[start] is '"' or '\'' ? text[start] : ' ';
        var end = End(mark == ' ' ? start : position, stopsAtColon: false, mark);
        return new Spot(text, position, mark == ' ' ? start : start + 1, end)
        {
            Value = facts,
            PartKind = frame.Key == SectionKeys.Part ? frame.Section?.PartKind : facts.Inner?.PartKind ?? facts.FileKind,
            IsFlow = true,
            Mark = mark,
            Before = frame.IsMap && start == position && position > 0 && text[position - 1] == ':' ? " " : "",
            Names = names,
        };
    }

    private int End(int start, bool stopsAtColon, char mark = ' ')
    {
        var at = Math.Max(start, position);
        var line = lines.End(lines.LineOf(at));
        while (at < line && (mark == ' ' ? text[at] is not (',' or '}' or ']' or '{' or '[') && !(stopsAtColon && text[at] == ':') && !LooseLine.IsComment(text, at, 0) : text[at] != mark))
        {
            at++;
        }

        return Math.Max(position, start + text.AsSpan(start, Math.Max(0, at - start)).TrimEnd().Length);
    }
}
