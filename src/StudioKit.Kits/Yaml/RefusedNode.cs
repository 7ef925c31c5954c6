using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>Stands where something was refused and reported, so that nobody complains of it twice.</summary>
internal sealed record RefusedNode(SourceText Source, int Line, int Column) : YamlNode(Source, Line, Column);
