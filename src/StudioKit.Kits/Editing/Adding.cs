using StudioKit.Kits.Description;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Edits that add a key to a section.</summary>
internal static class Adding
{
    /// <summary>Ways to write a key and its value into the section that is the last node, at the place that the kit's order of keys gives.</summary>
    public static IEnumerable<TextEdit> Of(Way way, string key, KitValue value)
    {
        var map = (MapNode)way.Last.Node;
        var section = way.Last.Section!;
        var facts = section.Find(key);
        var before = PlaceBefore(map, section, key);
        return map.IsFlow || way.IsInFlow ? [InFlow(way.Layout, map, before, key, value, facts)] : InBlock(way, map, before, key, value, facts);
    }

    /// <summary>The edit that writes a key and its value into a text that has none yet.</summary>
    public static TextEdit Alone(Layout layout, string key, KitValue value) =>
        AtEnd(layout, key + ":" + layout.Writer(0).Behind(value, KitSection.Kit.Find(key), 0), isApart: layout.Lines.Count > 1);

    // The pair that the new key follows: the last that the order puts before it; -1 where there is none.
    private static int PlaceBefore(MapNode map, ISection section, string key)
    {
        var order = section.All().Select(facts => facts.Key).ToList();
        var (place, highest) = (-1, -1);
        for (var i = 0; i < map.Pairs.Count; i++)
        {
            var at = order.IndexOf(map.Pairs[i].Key.Text);
            if (at > highest && at < order.IndexOf(key))
            {
                (place, highest) = (i, at);
            }
        }

        return place;
    }

    private static TextEdit InFlow(Layout layout, MapNode map, int before, string key, KitValue value, KeyFacts? facts)
    {
        var pair = $"{key}: {ValueWriter.Line(value, facts, isFlow: true)}";
        return map.Pairs.Count == 0 ? new TextEdit(layout.Start(map) + 1, 0, pair)
            : before < 0 ? new TextEdit(layout.Start(map.Pairs[0].Key), 0, pair + ", ")
            : new TextEdit(layout.End(map.Pairs[before]), 0, ", " + pair);
    }

    private static IEnumerable<TextEdit> InBlock(Way way, MapNode map, int before, string key, KitValue value, KeyFacts? facts)
    {
        var layout = way.Layout;
        var indent = map.Column - 1;
        var writer = layout.Writer(layout.Lines.LineOf(layout.Start(map)));
        var pair = key + ":" + writer.Behind(value, facts, indent);
        if (before < 0)
        {
            yield return new TextEdit(layout.Start(map.Pairs[0].Key), 0, pair + writer.NewLine(indent));
            yield break;
        }

        var last = layout.Lines.LineOf(layout.End(map.Pairs[before]));
        if (map.Pairs[before].Value is MapNode { IsFlow: false } or ListNode { IsFlow: false })
        {
            yield return before + 1 < map.Pairs.Count ? Above(layout, map.Pairs[before + 1].Key, last, new string(' ', indent) + pair, writer)
                : way.Parent is null ? AtEnd(layout, pair, IsApart(layout, map))
                : Under(layout, last, writer.NewLine(indent) + pair);
        }

        yield return Under(layout, last, writer.NewLine(indent) + pair);
    }

    private static TextEdit Under(Layout layout, int line, string text) => new(layout.Lines.End(line), 0, text);

    // Above the comments that are about the next key; apart from it by a blank line where that is apart from what is before.
    private static TextEdit Above(Layout layout, ScalarNode next, int after, string text, ValueWriter writer)
    {
        var line = layout.FirstLine(layout.Start(next), after);
        return new TextEdit(layout.Lines.Start(line), 0, text + writer.LineEnd + (layout.Lines.IsBlank(line - 1) ? writer.LineEnd : ""));
    }

    private static TextEdit AtEnd(Layout layout, string text, bool isApart)
    {
        var lineEnd = layout.Lines.LineEnd(0);
        var last = layout.Lines.Count - 1;
        var isEnded = layout.Lines.Start(last) == layout.Lines.End(last);
        var gap = isApart && !(isEnded && (last == 0 || layout.Lines.IsBlank(last - 1))) ? lineEnd : "";
        return new TextEdit(layout.Text.Length, 0, isEnded ? gap + text + lineEnd : lineEnd + gap + text);
    }

    // Whether blank lines part the sections.
    private static bool IsApart(Layout layout, MapNode map) =>
        map.Pairs.Skip(1).Any(pair => layout.FirstLine(layout.Start(pair.Key), -1) is > 0 and var line && layout.Lines.IsBlank(line - 1));
}
