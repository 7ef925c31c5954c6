using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>How the lines of a text go together: what belongs to which entry, and how new ones are written beside them.</summary>
internal static class LineStyle
{
    private const int UsualDashIndent = 2;

    /// <summary>A writer in the text's own style at a line.</summary>
    public static ValueWriter Writer(this Layout layout, int line) => new(layout.Lines.LineEnd(line), DashIndent(layout.Root) ?? UsualDashIndent);

    /// <summary>The first of the comment lines right above an entry that stand as far in as it does, which are about it; its own line where there are none.</summary>
    public static int FirstLine(this Layout layout, int start, int after)
    {
        var line = layout.Lines.LineOf(start);
        var indent = start - layout.Lines.Start(line);
        while (line - 1 > after && layout.IsComment(line - 1) && layout.Lines.Indent(line - 1) == indent)
        {
            line--;
        }

        return line;
    }

    /// <summary>The last of the comment lines right under an entry that cannot be about the next one; its own last line where there are none.</summary>
    public static int LastLine(this Layout layout, int end, int indent)
    {
        var own = layout.Lines.LineOf(end);
        var last = own;
        while (last + 1 < layout.Lines.Count && layout.IsComment(last + 1) && (layout.Lines.Indent(last + 1) > indent || (layout.Lines.Indent(last + 1) == 0 && indent > 0)))
        {
            last++;
        }

        // Comments at the margin may also be about a section that begins right below them.
        var isAboutNext = last + 1 < layout.Lines.Count && !layout.Lines.IsBlank(last + 1) && layout.Lines.Indent(last + 1) == 0;
        while (isAboutNext && last > own && layout.Lines.Indent(last) == 0)
        {
            last--;
        }

        return last;
    }

    /// <summary>What stays of a line whose values go: its comment, as far in as it stood; none where it has none.</summary>
    public static string? Left(this Layout layout, int line) => layout.Comment(line) is not { } at ? null
        : layout.IsComment(line) ? layout.Lines.Line(line)
        : new string(' ', layout.Lines.Indent(line)) + layout.Text[at..layout.Lines.End(line)];

    private static int? DashIndent(YamlNode? node) => node switch
    {
        MapNode { IsFlow: false } map => map.Pairs.Select(pair => pair.Value is ListNode { IsFlow: false } list ? list.Column - pair.Key.Column : DashIndent(pair.Value)).FirstOrDefault(indent => indent is not null),
        ListNode { IsFlow: false } list => list.Items.Select(DashIndent).FirstOrDefault(indent => indent is not null),
        _ => null,
    };
}
