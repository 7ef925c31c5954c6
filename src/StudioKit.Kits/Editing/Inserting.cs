using StudioKit.Kits.Description;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Edits that add an entry to a list.</summary>
internal static class Inserting
{
    /// <summary>The edit that writes an entry into the list that is the last node; none where it cannot be done line by line.</summary>
    /// <param name="way">The way to the list.</param>
    /// <param name="place">Place of the new entry; as many as there are to append it.</param>
    /// <param name="value">The entry.</param>
    public static TextEdit? Of(Way way, int place, KitValue value)
    {
        var list = (ListNode)way.Last.Node;
        return list.IsFlow && list.Items.Count == 0 && !way.IsInFlow && value is KitValue.Section ? Opened(way, value)
            : list.IsFlow || way.IsInFlow ? InFlow(way.Layout, list, place, value, way.Last.Facts)
            : place == list.Items.Count ? Under(way.Layout, list, value, way.Last.Facts)
            : Above(way.Layout, list, place, value, way.Last.Facts);
    }

    // [] gives way to lines below, as the file's other lists of sections have them.
    private static TextEdit? Opened(Way way, KitValue value)
    {
        if (way.Pair is null || way.Slot is not { } slot)
        {
            return null;
        }

        var layout = way.Layout;
        var end = layout.End(way.Last.Node);
        var line = layout.Lines.LineOf(end);
        var rest = layout.Text[end..layout.Lines.End(line)];
        return new TextEdit(slot, layout.Lines.End(line) - slot, rest + layout.Writer(line).Behind(new KitValue.List([value]), way.Last.Facts, way.Pair.Key.Column - 1));
    }

    private static TextEdit InFlow(Layout layout, ListNode list, int place, KitValue value, KeyFacts? facts)
    {
        var entry = ValueWriter.Line(value, facts, isFlow: true);
        return list.Items.Count == 0 ? new TextEdit(layout.Start(list) + 1, 0, entry)
            : place < list.Items.Count ? new TextEdit(layout.Start(list.Items[place]), 0, entry + ", ")
            : new TextEdit(layout.End(list.Items[^1]), 0, ", " + entry);
    }

    private static TextEdit Under(Layout layout, ListNode list, KitValue value, KeyFacts? facts)
    {
        var indent = list.Column - 1;
        var line = layout.LastLine(layout.End(list.Items[^1]), indent);
        var writer = layout.Writer(line);
        return new TextEdit(layout.Lines.End(line), 0, (IsApart(layout, list) ? writer.LineEnd : "") + writer.NewLine(indent) + Entry(writer, list, value, facts));
    }

    private static TextEdit? Above(Layout layout, ListNode list, int place, KitValue value, KeyFacts? facts)
    {
        if (layout.Dash(list, place) is not { } dash || !layout.IsFirst(dash))
        {
            return null;
        }

        var after = place == 0 ? -1 : layout.LastLine(layout.End(list.Items[place - 1]), list.Column - 1);
        var line = layout.FirstLine(dash, after);
        var writer = layout.Writer(line);
        var entry = new string(' ', list.Column - 1) + Entry(writer, list, value, facts) + writer.LineEnd;
        return new TextEdit(layout.Lines.Start(line), 0, IsApart(layout, list) ? entry + writer.LineEnd : entry);
    }

    private static string Entry(ValueWriter writer, ListNode list, KitValue value, KeyFacts? facts) => list.Items.Any(item => item is MapNode { IsFlow: true })
        ? "- " + ValueWriter.Line(value, facts, isFlow: false)
        : writer.Entry(value, facts, list.Column - 1);

    // Whether blank lines part the entries.
    private static bool IsApart(Layout layout, ListNode list) => list.Items.Count > 1 && layout.Dash(list, 1) is { } dash
        && layout.FirstLine(dash, layout.Lines.LineOf(layout.End(list.Items[0]))) is > 0 and var line && layout.Lines.IsBlank(line - 1);
}
