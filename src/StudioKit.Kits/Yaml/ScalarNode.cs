using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>A single value.</summary>
internal sealed record ScalarNode(SourceText Source, int Line, int Column, string Text, bool IsQuoted) : YamlNode(Source, Line, Column)
{
    /// <summary>Whether nothing was written.</summary>
    public bool IsEmpty => !IsQuoted && Text is "" or "~" or "null";
}
