using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Edits that take a key or an entry away.</summary>
internal static class Removing
{
    /// <summary>The edit that takes the last node away, with its key or hyphen; none where it cannot be done.</summary>
    /// <param name="way">The way to it.</param>
    /// <param name="withComments">Whether the comments on its lines go too; else each stays on a line of its own.</param>
    public static TextEdit? Of(Way way, bool withComments)
    {
        var owner = way with { Links = [.. way.Links.SkipLast(1)] };
        return way.Parent switch
        {
            MapNode { IsFlow: true } map => FromFlow(way.Layout, [.. map.Pairs.Select(pair => (way.Layout.Start(pair.Key), way.Layout.End(pair)))], way.Last.Place),
            ListNode { IsFlow: true } list => FromFlow(way.Layout, [.. list.Items.Select(item => (way.Layout.Start(item), way.Layout.End(item)))], way.Last.Place),
            MapNode { Pairs.Count: 1, Refused.Count: 0 } when owner.Parent is not null => Replacing.Over(owner, "{}", withComments),
            ListNode { Items.Count: 1 } => Replacing.Over(owner, "[]", withComments),
            MapNode map => FromMap(way, map, withComments),
            ListNode list when way.Layout.Dash(list, way.Last.Place) is { } dash && way.Layout.IsFirst(dash) => Lines(way.Layout, dash, way.Layout.End(way.Last.Node), withComments),
            _ => null,
        };
    }

    private static TextEdit FromMap(Way way, MapNode map, bool withComments)
    {
        var (layout, pair) = (way.Layout, way.Pair!);
        var start = layout.Start(pair.Key);
        return layout.IsFirst(start) || map.Pairs.Count == 1 ? Lines(layout, start, layout.End(pair), withComments) : BehindDash(layout, start, layout.End(pair), layout.Start(map.Pairs[1].Key), withComments);
    }

    // The next key moves up behind the hyphen; where comments stay between, the hyphen stands alone above them.
    private static TextEdit BehindDash(Layout layout, int start, int end, int next, bool withComments)
    {
        var (first, last) = (layout.Lines.LineOf(start), layout.Lines.LineOf(end));
        var between = Enumerable.Range(first, layout.Lines.LineOf(next) - first);
        if (withComments || !between.Any(line => layout.Comment(line) is not null))
        {
            return new TextEdit(start, next - start, "");
        }

        var left = Enumerable.Range(first + 1, last - first).Select(layout.Left).OfType<string>().Select(comment => layout.Lines.LineEnd(first) + comment);
        var own = layout.Comment(first) is { } at ? layout.Text[at..layout.Lines.End(first)] : "";
        var from = own.Length > 0 ? start : start - 1;
        return new TextEdit(from, layout.Lines.End(last) - from, own + string.Concat(left));
    }

    private static TextEdit Lines(Layout layout, int start, int end, bool withComments)
    {
        var (first, last) = (layout.Lines.LineOf(start), layout.Lines.LineOf(end));
        string[] left = withComments ? [] : [.. Enumerable.Range(first, last - first + 1).Select(layout.Left).OfType<string>()];
        if (left.Length > 0)
        {
            return Between(layout.Lines.Start(first), layout.Lines.End(last), string.Join(layout.Lines.LineEnd(first), left));
        }

        var isAtTop = first == 0 || layout.Lines.IsBlank(first - 1);
        if (last + 1 < layout.Lines.Count)
        {
            // One of two blank lines that would meet goes too.
            var isDoubled = isAtTop && last + 2 < layout.Lines.Count && layout.Lines.IsBlank(last + 1);
            return isDoubled ? Between(layout.Lines.Start(first), layout.Lines.Start(last + 2), "")
                : last + 2 == layout.Lines.Count && layout.Lines.IsBlank(last + 1) ? Between(layout.Lines.Start(Unblank(layout, first)), layout.Lines.Start(last + 1), "")
                : Between(layout.Lines.Start(first), layout.Lines.Start(last + 1), "");
        }

        var from = Unblank(layout, first);
        return Between(from == 0 ? layout.Lines.Start(0) : layout.Lines.End(from - 1), layout.Lines.End(last), "");
    }

    private static int Unblank(Layout layout, int line)
    {
        while (line > 0 && layout.Lines.IsBlank(line - 1))
        {
            line--;
        }

        return line;
    }

    private static TextEdit FromFlow(Layout layout, (int Start, int End)[] entries, int place)
    {
        var (start, end) = entries[place];
        if (place + 1 < entries.Length)
        {
            var next = entries[place + 1].Start;
            return HasComment(layout, end, next) ? Between(start, layout.Text.IndexOf(',', end) + 1, "") : Between(start, next, "");
        }

        if (place > 0)
        {
            return HasComment(layout, entries[place - 1].End, start) ? Between(start, end, "") : Between(entries[place - 1].End, end, "");
        }

        var comma = layout.Text.AsSpan(end).TrimStart(' ');
        return Between(start, comma.StartsWith(",") ? layout.Text.Length - comma.Length + 1 : end, "");
    }

    private static bool HasComment(Layout layout, int from, int to) =>
        Enumerable.Range(layout.Lines.LineOf(from), layout.Lines.LineOf(to) - layout.Lines.LineOf(from) + 1).Any(line => layout.Comment(line) is { } at && at >= from && at < to);

    private static TextEdit Between(int start, int end, string text) => new(start, end - start, text);
}
