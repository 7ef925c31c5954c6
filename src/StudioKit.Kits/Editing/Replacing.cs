using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Edits that put one value in the place of another.</summary>
internal static class Replacing
{
    /// <summary>Ways to write a value in the place of the last node, the most natural first.</summary>
    public static IEnumerable<TextEdit> Of(Way way, KitValue value)
    {
        var (layout, node) = (way.Layout, way.Last.Node);
        var start = layout.Start(node);
        if (Layout.IsAbsent(node))
        {
            return Filled(way, value);
        }

        var writer = layout.Writer(layout.Lines.LineOf(start));
        var mark = node is ScalarNode { IsQuoted: true } && layout.Text[start] is '"' or '\'' ? layout.Text[start] : ' ';
        return new[] { mark, '"' }.Distinct().Select(quote => ValueWriter.Line(value, way.Last.Facts, way.IsInFlow, quote)).Distinct().Select(line => Over(way, line));
    }

    /// <summary>The edit that writes a line in the place of the last node; comments within a block stay, each on a line of its own.</summary>
    public static TextEdit Over(Way way, string line, bool withComments = false)
    {
        var (layout, node) = (way.Layout, way.Last.Node);
        var (start, end) = (layout.Start(node), layout.End(node));
        return node switch
        {
            MapNode { IsFlow: false } or ListNode { IsFlow: false } => OverBlock(layout, way.Slot ?? start, end, way.Parent is null ? line : " " + line, withComments),
            ScalarNode when layout.IsBlockScalar(start) => OverBlockScalar(layout, start, end, line),
            _ => new TextEdit(start, end - start, line),
        };
    }

    private static TextEdit OverBlock(Layout layout, int slot, int end, string line, bool withComments)
    {
        var (first, last) = (layout.Lines.LineOf(slot), layout.Lines.LineOf(end));
        var header = !withComments && layout.Comment(first) is { } at ? Gap(layout, at) : "";
        var left = withComments ? [] : Enumerable.Range(first + 1, last - first).Select(layout.Left).OfType<string>();
        var lineEnd = layout.Lines.LineEnd(first);
        return new TextEdit(slot, layout.Lines.End(last) - slot, line + header + string.Concat(left.Select(comment => lineEnd + comment)));
    }

    // A comment with the blanks before it.
    private static string Gap(Layout layout, int comment)
    {
        var from = comment;
        while (from > 0 && layout.Text[from - 1] == ' ')
        {
            from--;
        }

        return layout.Text[from..layout.Lines.End(layout.Lines.LineOf(comment))];
    }

    private static TextEdit OverBlockScalar(Layout layout, int start, int end, string line)
    {
        var header = start;
        while (header < layout.Text.Length && layout.Text[header] is '|' or '>' or '+' or '-' or (>= '0' and <= '9'))
        {
            header++;
        }

        var rest = layout.Text[header..Math.Max(header, layout.Lines.End(layout.Lines.LineOf(start)))];
        return new TextEdit(start, Math.Max(end, header + rest.Length) - start, line + rest);
    }

    private static IEnumerable<TextEdit> Filled(Way way, KitValue value)
    {
        var layout = way.Layout;
        var slot = way.Slot ?? layout.End(way.Pair!.Key);
        var line = layout.Lines.LineOf(slot);
        var writer = layout.Writer(line);
        var behind = way.IsInFlow || way.Pair is null ? " " + ValueWriter.Line(value, way.Last.Facts, way.IsInFlow) : writer.Behind(value, way.Last.Facts, way.Pair.Key.Column - 1);
        var at = behind.StartsWith(' ') ? slot : layout.Lines.End(line);
        yield return new TextEdit(at, 0, way.Slot is null ? ":" + behind : behind);
        yield return new TextEdit(slot, 0, $"{(way.Slot is null ? ":" : "")} {ValueWriter.Line(value, way.Last.Facts, way.IsInFlow, '"')}");
    }
}
