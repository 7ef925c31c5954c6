using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A list.</summary>
internal sealed record ListNode(SourceText Source, int Line, int Column, IReadOnlyList<YamlNode> Items) : YamlNode(Source, Line, Column)
{
    /// <summary>Whether it stands between brackets.</summary>
    public bool IsFlow { get; init; }
}
