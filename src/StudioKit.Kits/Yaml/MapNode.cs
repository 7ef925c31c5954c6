using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A section: keys with their values, in the order written.</summary>
internal sealed record MapNode(SourceText Source, int Line, int Column, IReadOnlyList<MapPair> Pairs) : YamlNode(Source, Line, Column)
{
    public MapPair? Find(string key) => Pairs.FirstOrDefault(pair => pair.Key.Text == key);
}
