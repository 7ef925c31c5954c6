using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A piece of a YAML file that knows where it stands.</summary>
internal abstract record YamlNode(SourceText Source, int Line, int Column) : PlacedText(Source, Line, Column);
