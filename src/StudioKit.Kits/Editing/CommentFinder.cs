using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Finds the comments of a text: a number sign at the start of a line or after a blank, outside every value.</summary>
internal static class CommentFinder
{
    /// <summary>Where the comment of each line begins, or -1.</summary>
    public static int[] Find(Layout layout)
    {
        var values = new List<(int Start, int End)>();
        Collect(layout.Root, layout, values);
        values.Sort();
        var found = new int[layout.Lines.Count];
        var next = 0;
        for (var line = 0; line < found.Length; line++)
        {
            found[line] = In(layout, line, values, ref next);
        }

        return found;
    }

    private static int In(Layout layout, int line, List<(int Start, int End)> values, ref int next)
    {
        var start = layout.Lines.Start(line);
        for (var at = start; at < layout.Lines.End(line); at++)
        {
            while (next < values.Count && values[next].End <= at)
            {
                next++;
            }

            if (next < values.Count && values[next].Start <= at)
            {
                at = values[next].End - 1;
            }
            else if (layout.Text[at] == '#' && (at == start || layout.Text[at - 1] is ' ' or '\t'))
            {
                return at;
            }
        }

        return -1;
    }

    private static void Collect(YamlNode? node, Layout layout, List<(int Start, int End)> values)
    {
        switch (node)
        {
            case MapNode map:
                foreach (var pair in map.Pairs)
                {
                    Collect(pair.Key, layout, values);
                    Collect(pair.Value, layout, values);
                }

                break;
            case ListNode list:
                foreach (var item in list.Items)
                {
                    Collect(item, layout, values);
                }

                break;
            case ScalarNode when !Layout.IsAbsent(node):
                var start = layout.Start(node);
                Add(layout, start, layout.End(node), values);
                break;
        }
    }

    // The header of a block value may bear a comment, so only its indicator and its lines are its own.
    private static void Add(Layout layout, int start, int end, List<(int Start, int End)> values)
    {
        if (!layout.IsBlockScalar(start))
        {
            values.Add((start, end));
            return;
        }

        values.Add((start, start + 1));
        var header = layout.Lines.LineOf(start);
        if (layout.Lines.LineOf(end) > header)
        {
            values.Add((layout.Lines.Start(header + 1), end));
        }
    }
}
