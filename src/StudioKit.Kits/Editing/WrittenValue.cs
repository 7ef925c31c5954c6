using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Editing;

/// <summary>A value of a kit as it is written.</summary>
/// <param name="Path">Path of its key.</param>
/// <param name="Start">Where it begins in the text, in UTF-16 units from 0 [1].</param>
/// <param name="Length">How long it is, quotation marks included, in UTF-16 units [1].</param>
/// <param name="Line">Its line, counted from 1 [1].</param>
/// <param name="Column">Its column in UTF-16 units, counted from 1 [1].</param>
/// <param name="Value">What it says.</param>
public sealed record WrittenValue(string Path, int Start, int Length, int Line, int Column, KitValue Value)
{
    internal static WrittenValue Of(Way way, string path) => way.Parent is ListNode list
        ? Of(way.Layout, list, way.Last.Place, path)
        : Of(way.Layout, way.Pair!, path);

    internal static WrittenValue Of(Layout layout, MapPair pair, string path) =>
        Of(layout, pair.Value, Layout.IsAbsent(pair.Value) ? layout.End(pair) : layout.Start(pair.Value), path);

    internal static WrittenValue Of(Layout layout, ListNode list, int place, string path) => Of(layout, list.Items[place], layout.Start(list.Items[place]), path);

    private static WrittenValue Of(Layout layout, YamlNode node, int start, string path) =>
        new(path, start, Math.Max(0, layout.End(node) - start), node.Line, node.Column, ValueTree.Of(node, layout));
}
