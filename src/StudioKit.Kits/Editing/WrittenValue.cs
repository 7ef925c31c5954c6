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
    internal static WrittenValue Of(Way way, string path)
    {
        var (layout, node) = (way.Layout, way.Last.Node);
        var start = Layout.IsAbsent(node) ? way.Slot ?? layout.End(way.Pair!.Key) : layout.Start(node);
        return new WrittenValue(path, start, Math.Max(0, layout.End(node) - start), node.Line, node.Column, ValueTree.Of(node, layout));
    }
}
