namespace StudioKit.Kits.Yaml;

/// <summary>One key with its value.</summary>
internal sealed record MapPair(ScalarNode Key, YamlNode Value);
