using StudioKit.Kits.Editing;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Forms;

/// <summary>Finds the field or section that a diagnostic is about by where it points.</summary>
internal static class FaultPlace
{
    /// <summary>Path of the field or section; empty for the whole kit.</summary>
    public static string Of(Diagnostic fault, Layout layout) => In(layout.Root!, "", layout.Lines.Offset(fault.Line, fault.Column), fault.Code, layout);

    private static string In(YamlNode node, string path, int offset, string code, Layout layout) => node switch
    {
        MapNode map => InMap(map, path, offset, code, layout),
        ListNode list => InList(list, path, offset, code, layout),
        _ => path,
    };

    // A section begins where its first key does: what points there is about the section, unless it is about a key.
    private static string InMap(MapNode map, string path, int offset, string code, Layout layout)
    {
        if (offset == layout.Start(map) || code is DiagnosticCodes.UnknownKey && map.Pairs.Any(pair => layout.Start(pair.Key) == offset))
        {
            return path;
        }

        var pair = map.Pairs.FirstOrDefault(pair => layout.Start(pair.Key) <= offset && offset <= Math.Max(layout.End(pair), layout.Start(pair.Value)));
        var inner = path.Length == 0 ? pair?.Key.Text : $"{path}.{pair?.Key.Text}";

        // What is written under a key that no kit has is about the section, as nothing in the form stands for it.
        return pair is null || KitGroup.FieldAt(inner!) is null ? path : In(pair.Value, inner!, offset, code, layout);
    }

    // An entry that is a single value belongs to its list's field.
    private static string InList(ListNode list, string path, int offset, string code, Layout layout)
    {
        for (var i = 0; i < list.Items.Count; i++)
        {
            var item = list.Items[i];
            if (layout.Start(item) <= offset && offset <= layout.End(item))
            {
                return item is MapNode or ListNode || KitGroup.FieldAt(path)?.Group is not null ? In(item, FormattableString.Invariant($"{path}[{i}]"), offset, code, layout) : path;
            }
        }

        return path;
    }
}
