using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>What stands in the way of a change, before any of it is written.</summary>
internal static class EditObstacle
{
    private const string AsText = "Change it in the text.";

    /// <summary>The first obstacle; none where the change can be tried.</summary>
    public static KitEditRefusal? To(EditRequest request, KitValue? value) =>
        request.Steps is null ? NoPlace(request.Path)
        : InText(request) ?? (request.Way is null ? null : OnWay(request.Way, request.Path)) ?? InRest(request) ?? (value is null ? null : InValue(value, request.Path) ?? InKeys(value, Facts(request.Steps), request.Path));

    public static KitEditRefusal NoPlace(string path) => new(KitEditRefusalKind.NoSuchPlace, path, $"The kit has no '{Excerpt.Short(path)}'.", "A path reads like 'set-ups[0].lights[1].distance'; lists count from 0.");

    public static KitEditRefusal WouldAlterMore(string path) => new(
        KitEditRefusalKind.WouldAlterMore, path, $"'{Excerpt.Short(path)}' cannot be changed without altering what stands around it.", AsText);

    private static KitEditRefusal? InText(EditRequest request)
    {
        var layout = request.Layout;
        if (layout.Root is { } root)
        {
            return IsSeveral(layout, root) ? new(KitEditRefusalKind.SeveralDocuments, request.Path, "The file holds several documents.", "One document stands in a file: remove the '---' and what follows.") : null;
        }

        var fault = layout.Faults[0];
        var isTab = fault.Code == DiagnosticCodes.Syntax && fault.SourceLine.TrimStart(' ').StartsWith('\t');
        return layout.IsEmpty ? null
            : new(isTab ? KitEditRefusalKind.Tab : KitEditRefusalKind.Unreadable, request.Path, $"Line {fault.Line} stands in the way: {fault.Message}", fault.Hint);
    }

    // Whatever follows the root and is no comment, and no mark that ends a document.
    private static bool IsSeveral(Layout layout, YamlNode root)
    {
        var last = layout.Lines.LineOf(layout.End(root));
        return Enumerable.Range(last + 1, layout.Lines.Count - last - 1).Any(line => !layout.Lines.IsBlank(line) && !layout.IsComment(line) && layout.Lines.Line(line).TrimEnd() != "...");
    }

    private static KitEditRefusal? OnWay(Way way, string path)
    {
        if (way.Links.Any(link => link.Node is RefusedNode || way.Layout.IsMarked(link.Node)) || (way.IsWhole && HoldsMark(way.Last.Node, way.Layout)))
        {
            return new(KitEditRefusalKind.AliasOrAnchor, path, $"'{Excerpt.Short(path)}' holds an alias, an anchor or a tag, or lies in one that does.", "Write the values out first.");
        }

        var refused = way.Links.Select(link => link.Node).OfType<MapNode>().SelectMany(map => map.Refused).ToList();
        var last = way.IsWhole ? way.Pair?.Key.Text : way.Rest[0].Key;
        return refused.Exists(key => key.Text == "<<") ? new(KitEditRefusalKind.MergeKey, path, "The section merges another in with '<<'.", "Write the values out first.")
            : refused.Exists(key => key.Text == last) || way.Links.Any(link => refused.Exists(key => key.Text == link.Facts?.Key))
                ? new(KitEditRefusalKind.RepeatedKey, path, $"'{Excerpt.Short(path)}' stands twice.", "Keep one of them first.")
            : null;
    }

    private static bool HoldsMark(YamlNode node, Layout layout) => node switch
    {
        MapNode map => layout.IsMarked(map) || map.Pairs.Any(pair => HoldsMark(pair.Key, layout) || HoldsMark(pair.Value, layout)),
        ListNode list => layout.IsMarked(list) || list.Items.Any(item => HoldsMark(item, layout)),
        RefusedNode => true,
        _ => layout.IsMarked(node),
    };

    // Only keys can be added on the way, and first entries of lists that are not there yet.
    private static KitEditRefusal? InRest(EditRequest request)
    {
        var rest = request.Way?.Rest ?? request.Steps!;
        var (section, facts) = (request.Way?.Last.Section ?? (request.Way is null ? KitSection.Kit : null), request.Way?.Last.Facts);
        var isEmpty = request.Way?.Last.Node is not (ScalarNode { IsEmpty: false } or ListNode);
        for (var i = 0; i < rest.Count; i++)
        {
            if (rest[i].Key is not { } key)
            {
                if (rest[i].Index > 0 || facts is not { IsList: true } || !isEmpty)
                {
                    return NoPlace(request.Path);
                }

                continue;
            }

            var isBehindList = i == 0 && request.Way?.Last is { Node: ListNode } || (i > 0 && facts is { IsList: true } && rest[i - 1].Key is not null);
            var isBehindValue = i == 0 && request.Way?.Last.Node is ScalarNode { IsEmpty: false } && section?.PartKind is null;
            if (section is null || isBehindList || isBehindValue)
            {
                return NoPlace(request.Path);
            }

            if (section.Find(key) is not { } found)
            {
                return UnknownKey(key, section, request.Path);
            }

            (section, facts) = (found.Inner, found);
        }

        return null;
    }

    private static KitEditRefusal? InValue(KitValue value, string path) => value switch
    {
        KitValue.Scalar scalar when scalar.Text.Trim().Length == 0 => new(KitEditRefusalKind.NoValue, path, "There is no value.", "Remove the key to leave it out."),
        KitValue.Scalar scalar when !ScalarText.IsWritable(scalar.Text.Trim()) => new(
            KitEditRefusalKind.UnwritableCharacter, path, "The value has a line break, a control character or half a character.", "Write it on one line, in plain letters."),
        KitValue.List list => list.Items.Select(item => InValue(item, path)).FirstOrDefault(refusal => refusal is not null),
        KitValue.Section section => section.Entries.Select(entry => InValue(entry.Value, $"{path}.{entry.Key}")).FirstOrDefault(refusal => refusal is not null),
        _ => null,
    };

    private static KitEditRefusal? InKeys(KitValue value, KeyFacts? facts, string path) => value switch
    {
        KitValue.List list => list.Items.Select(item => InKeys(item, facts, path)).FirstOrDefault(refusal => refusal is not null),
        KitValue.Section section => section.Entries.Select(entry => facts?.Inner is not { } inner ? NoPlace($"{path}.{entry.Key}")
            : inner.Find(entry.Key) is { } found ? InKeys(entry.Value, found, $"{path}.{entry.Key}")
            : UnknownKey(entry.Key, inner, path)).FirstOrDefault(refusal => refusal is not null),
        _ => null,
    };

    /// <summary>What the last key of a path takes; none where nobody knows it.</summary>
    public static KeyFacts? Facts(IEnumerable<KeyStep> steps)
    {
        KeyFacts? facts = null;
        foreach (var step in steps.Where(step => step.Key is not null))
        {
            facts = (facts is null ? KitSection.Kit : facts.Inner)?.Find(step.Key!);
        }

        return facts;
    }

    private static KitEditRefusal UnknownKey(string key, ISection section, string path)
    {
        var known = section.All().Select(facts => facts.Key).ToList();
        return new(
            KitEditRefusalKind.UnknownKey, path, $"'{Excerpt.Short(key)}' is not a key of '{section.Name}'.",
            NearestName.Of(key, known) is { } nearest ? $"Did you mean '{nearest}'?" : $"Keys known here: {string.Join(", ", known)}.");
    }
}
