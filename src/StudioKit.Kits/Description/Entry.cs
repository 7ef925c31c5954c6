using System.Text.Json;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>One key of a section: how it is read, what stands in for it, and how an editor is told of it.</summary>
internal abstract class Entry<TOwner>(string key, string doc, bool isRequired)
{
    public string Key { get; } = key;

    public string Doc { get; } = doc;

    public bool IsRequired { get; } = isRequired;

    /// <summary>Reads the value and returns the owner with it filled in; faults are reported and leave the owner as it was.</summary>
    public abstract TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context);

    /// <summary>Notes what stands in where the key was left out.</summary>
    public abstract void NoteDefaults(TOwner owner, string path, ReadContext context);

    /// <summary>What the key takes, for forms and completion.</summary>
    public abstract KeyFacts Facts(TOwner seed);

    /// <summary>Writes the key's JSON Schema, without its name.</summary>
    public abstract void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds);
}
