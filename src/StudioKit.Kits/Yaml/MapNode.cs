using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A section: keys with their values, in the order written.</summary>
internal sealed record MapNode(SourceText Source, int Line, int Column, IReadOnlyList<MapPair> Pairs) : YamlNode(Source, Line, Column)
{
    /// <summary>Whether it stands between braces.</summary>
    public bool IsFlow { get; init; }

    /// <summary>Keys that were refused, so that they are not among the pairs: merge keys, and all but the first of a name.</summary>
    public IReadOnlyList<ScalarNode> Refused { get; init; } = [];

    public MapPair? Find(string key) => Pairs.FirstOrDefault(pair => pair.Key.Text == key);
}
