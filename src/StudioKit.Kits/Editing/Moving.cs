using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Edits that move an entry of a list to another place in it.</summary>
internal static class Moving
{
    /// <summary>The edit that moves the last node; what stands between the entries stays between them.</summary>
    public static TextEdit? Of(Way way, int place)
    {
        var list = (ListNode)way.Parent!;
        var entries = list.IsFlow ? list.Items.Select(item => (way.Layout.Start(item), way.Layout.End(item))).ToArray() : Blocks(way.Layout, list);
        if (entries is null)
        {
            return null;
        }

        var order = Enumerable.Range(0, entries.Length).ToList();
        order.RemoveAt(way.Last.Place);
        order.Insert(place, way.Last.Place);
        var text = string.Concat(order.Select((from, to) => Piece(way.Layout, entries[from]) + (to + 1 < entries.Length ? way.Layout.Text[entries[to].Item2..entries[to + 1].Item1] : "")));
        var start = entries[0].Item1;
        return new TextEdit(start, entries[^1].Item2 - start, text);
    }

    private static string Piece(Layout layout, (int Start, int End) entry) => layout.Text[entry.Start..entry.End];

    // Whole lines, with the comments above and below that are about the entry.
    private static (int, int)[]? Blocks(Layout layout, ListNode list)
    {
        var blocks = new (int, int)[list.Items.Count];
        var after = -1;
        for (var i = 0; i < blocks.Length; i++)
        {
            if (layout.Dash(list, i) is not { } dash || !layout.IsFirst(dash))
            {
                return null;
            }

            var last = layout.LastLine(layout.End(list.Items[i]), list.Column - 1);
            blocks[i] = (layout.Lines.Start(layout.FirstLine(dash, after)), layout.Lines.End(last));
            after = last;
        }

        return blocks;
    }
}
