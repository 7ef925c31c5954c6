using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>Finds what may stand at a place outside brackets.</summary>
internal sealed class SpotFinder(string text, int position, LineMap lines, HolderStack holders, NamesSeen names)
{
    private const int Step = 2;

    /// <summary>What may stand at the place, which lies on a line; none where nothing may, or where brackets hold it.</summary>
    public Spot? OnLine(int line)
    {
        var (start, end) = (lines.Start(line), lines.End(line));
        var place = Math.Max(position, start);
        var at = LooseLine.Skip(text, start, place);
        if (LooseLine.HoldsComment(text, start, place) || (at == place && LooseLine.Skip(text, at, end) is var rest && rest < end && rest > place))
        {
            return null;
        }

        holders.Leave(at - start, LooseLine.IsDash(text, at, place));
        var isItem = false;
        while (LooseLine.IsDash(text, at, place))
        {
            holders.EnterItem(at - start);
            at = LooseLine.Skip(text, at + 1, place);
            isItem = true;
        }

        return at < place && text[at] is '{' or '[' ? null
            : LooseLine.Colon(text, at, place) is { } colon ? Value(line, at, colon, place)
            : Word(line, at, place, isItem);
    }

    private Spot? Value(int line, int at, int colon, int place)
    {
        var key = LooseLine.Plain(text.AsSpan(at, colon - at));
        var value = LooseLine.Skip(text, colon + 1, place);
        if (holders.Top.Section?.Find(key) is not { } facts || (value < place && text[value] is '{' or '[' or '|' or '>'))
        {
            return null;
        }

        return Value(line, value, place, facts, key == SectionKeys.Part ? holders.Top.Section!.PartKind : facts.Inner?.PartKind ?? facts.FileKind) with { Before = value == colon + 1 ? " " : "" };
    }

    private Spot Value(int line, int value, int place, KeyFacts facts, string? partKind)
    {
        var mark = value < lines.End(line) && text[value] is '"' or '\'' && value < place ? text[value] : ' ';
        var end = Math.Max(place, LooseLine.ValueEnd(text, value, lines.End(line)));
        var start = mark == ' ' ? value : value + 1;
        return new Spot(text, place, start, mark != ' ' && end > start && text[end - 1] == mark && end - 1 >= place ? end - 1 : end)
        {
            Value = facts,
            PartKind = partKind,
            Mark = mark,
            Names = names,
        };
    }

    private Spot? Word(int line, int at, int place, bool isItem)
    {
        // Nothing stands under a value: what is typed there belongs to the section around it.
        while (holders.Top is { Column: >= 0 } and ({ IsFilled: true } or { IsItem: false, Facts.Kind: not null }))
        {
            holders.Pop();
        }

        var top = holders.Top;
        var needsBlank = isItem && text[at - 1] == '-';
        return top.IsItem && top.Facts is { Kind: not null } facts ? (isItem ? Value(line, at, place, facts, null) with { Before = needsBlank ? " " : "" } : null)
            : top.IsList && top.Facts!.Inner is { } entry ? Entry(line, at, place, top, entry)
            : top.Section is { } section && Key(line, at, place, isItem, section) is { } key ? key with { Before = needsBlank ? " " : Before(line, at, isItem) }
            : null;
    }

    // A list that has no hyphen yet on this line: the candidates bring it along.
    private Spot Entry(int line, int at, int place, Holder list, ISection section)
    {
        var column = list.Inner ?? list.Column + Step;
        return Bare(line, at, place) with
        {
            Section = section,
            PartKind = section.PartKind,
            From = lines.Start(line),
            Before = new string(' ', column) + "- ",
            Column = column + Step,
        };
    }

    private Spot? Key(int line, int at, int place, bool isItem, ISection section)
    {
        var column = isItem ? at - lines.Start(line) : Column(line, at);
        return !isItem && LooseLine.Colon(text, at, lines.End(line)) is null && PartsKeyFromValue(line, column) ? null : Bare(line, at, place) with
        {
            Section = section,
            PartKind = isItem ? section.PartKind : null,
            From = isItem || column == at - lines.Start(line) ? at : lines.Start(line),
            Column = column,
            Taken = [.. Siblings.Of(text, lines, line, column, isItem)],
        };
    }

    // Amid what stands deeper below a key that says nothing on its own line, a key of its section would take the rest of that away.
    private bool PartsKeyFromValue(int line, int column)
    {
        var below = Enumerable.Range(line + 1, lines.Count - line - 1).FirstOrDefault(HasContent, -1);
        var above = Enumerable.Range(0, line).LastOrDefault(before => HasContent(before) && lines.Indent(before) <= column, -1);
        if (below < 0 || above < 0 || lines.Indent(below) <= column)
        {
            return false;
        }

        var (at, end) = (LooseLine.Skip(text, lines.Start(above), lines.End(above)), lines.End(above));
        while (LooseLine.IsDash(text, at, end))
        {
            at = LooseLine.Skip(text, at + 1, end);
        }

        return at - lines.Start(above) == column && LooseLine.Colon(text, at, end) is { } colon && LooseLine.Skip(text, colon + 1, end) is var value && (value >= end || text[value] == '#');
    }

    private bool HasContent(int line) => !lines.IsBlank(line) && text[LooseLine.Skip(text, lines.Start(line), lines.End(line))] != '#';

    private Spot Bare(int line, int at, int place)
    {
        var end = lines.End(line);
        var colon = LooseLine.Colon(text, at, end);
        return new Spot(text, place, at, Math.Max(place, colon ?? LooseLine.ValueEnd(text, at, end))) { HasColon = colon >= place, LineEnd = lines.LineEnd(line), Names = names };
    }

    private string Before(int line, int at, bool isItem) => !isItem && Column(line, at) is var column && column != at - lines.Start(line) ? new string(' ', column) : "";

    // Where the section's keys stand; where it has none yet, any place behind its own key will do.
    private int Column(int line, int at) => holders.Top.Column < 0 ? 0
        : holders.Top.Inner ?? (LooseLine.Colon(text, at, lines.End(line)) is null ? Below(line) : null) ?? (at - lines.Start(line) > holders.Top.Column ? at - lines.Start(line) : holders.Top.Column + Step);

    private int? Below(int line)
    {
        for (var next = line + 1; next < lines.Count; next++)
        {
            if (HasContent(next))
            {
                return lines.Indent(next) > holders.Top.Column ? lines.Indent(next) : null;
            }
        }

        return null;
    }
}
