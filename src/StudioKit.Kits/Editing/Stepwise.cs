using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>Makes one list or section of another value by value, so that what both have stays as it is written.</summary>
internal static class Stepwise
{
    public static KitEditResult List(KitText text, string path, int count, KitValue.List to)
    {
        var steps = new List<Func<KitText, KitEditResult>>();
        for (var i = 0; i < Math.Min(count, to.Items.Count); i++)
        {
            var place = i;
            steps.Add(now => now.Set(Entry(path, place), to.Items[place]));
        }

        for (var i = count; i < to.Items.Count; i++)
        {
            var place = i;
            steps.Add(now => now.Insert(path, place, to.Items[place]));
        }

        for (var i = count - 1; i >= to.Items.Count; i--)
        {
            var place = i;
            steps.Add(now => now.Remove(Entry(path, place)));
        }

        return All(text, steps);
    }

    public static KitEditResult Section(KitText text, string path, MapNode map, KitValue.Section to) => All(text,
    [
        .. to.Entries.Select(entry => (Func<KitText, KitEditResult>)(now => now.Set($"{path}.{entry.Key}", entry.Value))),
        .. map.Pairs.Where(pair => to.Find(pair.Key.Text) is null).Select(pair => (Func<KitText, KitEditResult>)(now => now.Remove($"{path}.{pair.Key.Text}"))),
    ]);

    private static KitEditResult All(KitText text, IEnumerable<Func<KitText, KitEditResult>> steps)
    {
        var now = text;
        foreach (var step in steps)
        {
            var result = step(now);
            if (!result.IsDone)
            {
                return result with { Before = text, After = text };
            }

            now = result.After;
        }

        return new KitEditResult(text, now, TextEdit.Between(text.Text, now.Text), null);
    }

    private static string Entry(string path, int place) => FormattableString.Invariant($"{path}[{place}]");
}
