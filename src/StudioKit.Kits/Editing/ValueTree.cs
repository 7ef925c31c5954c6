using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>A kit's values without where and how they are written, and the changes that can be asked for made to them.</summary>
/// <remarks>What an edit of the text must come to is worked out here, on another way than the text's.</remarks>
internal static class ValueTree
{
    public static KitValue Of(YamlNode? node, Layout layout) => node switch
    {
        null => new KitValue.Section([]),
        ScalarNode scalar => KitValue.Of(scalar.IsEmpty ? "" : scalar.Text.Trim()),
        ListNode list => new KitValue.List([.. list.Items.Select(item => Of(item, layout))]),
        MapNode map => new KitValue.Section([.. map.Pairs.Select(pair => new KitEntry(pair.Key.Text, Of(pair.Value, layout)))]),
        _ => KitValue.Of(layout.Text[layout.Start(node)..layout.End(node)]),
    };

    /// <summary>The same without blanks around its values.</summary>
    public static KitValue Trimmed(KitValue value) => value switch
    {
        KitValue.Scalar scalar => KitValue.Of(scalar.Text.Trim()),
        KitValue.List list => new KitValue.List([.. list.Items.Select(Trimmed)]),
        KitValue.Section section => new KitValue.Section([.. section.Entries.Select(entry => entry with { Value = Trimmed(entry.Value) })]),
        _ => value,
    };

    /// <summary>Whether both say the same, in whatever order a section's keys stand.</summary>
    public static bool Same(KitValue one, KitValue other) => (one, other) switch
    {
        (KitValue.List a, KitValue.List b) => a.Items.Count == b.Items.Count && a.Items.Zip(b.Items).All(pair => Same(pair.First, pair.Second)),
        (KitValue.Section a, KitValue.Section b) => a.Entries.Count == b.Entries.Count && a.Entries.All(entry => b.Find(entry.Key) is { } found && Same(entry.Value, found.Value)),
        _ => one == other,
    };

    /// <summary>The values with the one at the end of a path changed; none taken away where the change gives none.</summary>
    public static KitValue Changed(KitValue value, IReadOnlyList<KeyStep> steps, Func<KitValue?, KitValue?> change) => Changed(value, steps, 0, change)!;

    private static KitValue? Changed(KitValue? value, IReadOnlyList<KeyStep> steps, int at, Func<KitValue?, KitValue?> change)
    {
        if (at == steps.Count)
        {
            return change(value);
        }

        return steps[at].Key is { } key
            ? WithKey(AsSection(value), key, Changed(AsSection(value).Find(key)?.Value, steps, at + 1, change))
            : WithItem(AsList(value), steps[at].Index, Changed(AsList(value).Items.ElementAtOrDefault(steps[at].Index), steps, at + 1, change));
    }

    // The name of a part in place of a section means the section with that part.
    private static KitValue.Section AsSection(KitValue? value) => value switch
    {
        KitValue.Section section => section,
        KitValue.Scalar { Text.Length: > 0 } part => new KitValue.Section([new KitEntry(SectionKeys.Part, part)]),
        _ => new KitValue.Section([]),
    };

    /// <summary>A list; one value alone as a list of it.</summary>
    public static KitValue.List AsList(KitValue? value) => value switch
    {
        KitValue.List list => list,
        null or KitValue.Scalar { Text.Length: 0 } => new KitValue.List([]),
        _ => new KitValue.List([value]),
    };

    private static KitValue.Section WithKey(KitValue.Section section, string key, KitValue? value) => value is null
        ? new KitValue.Section([.. section.Entries.Where(entry => entry.Key != key)])
        : section.Find(key) is { } found
            ? new KitValue.Section([.. section.Entries.Select(entry => entry == found ? entry with { Value = value } : entry)])
            : new KitValue.Section([.. section.Entries, new KitEntry(key, value)]);

    private static KitValue.List WithItem(KitValue.List list, int place, KitValue? value) => value is null
        ? new KitValue.List([.. list.Items.Where((_, at) => at != place)])
        : place == list.Items.Count
            ? new KitValue.List([.. list.Items, value])
            : new KitValue.List([.. list.Items.Select((item, at) => at == place ? value : item)]);
}
