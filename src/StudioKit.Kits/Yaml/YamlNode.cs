using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A piece of a YAML file that knows where it stands.</summary>
internal abstract record YamlNode(SourceText Source, int Line, int Column) : PlacedText(Source, Line, Column)
{
    /// <summary>Just behind its last character, line and column counted from 1; that of a block's last value where it is a block.</summary>
    public (int Line, int Column) End { get; init; }
}
