using System.Text.Json;

namespace StudioKit.Kits.Description;

/// <summary>A section whatever the record it fills, for the schema.</summary>
internal interface ISection
{
    /// <summary>Name of its definition in the schema.</summary>
    public string Name { get; }

    /// <summary>Folder of the parts library that may stand for it; none where it has none.</summary>
    public string? PartKind { get; }

    /// <summary>What it describes, in a sentence.</summary>
    public string Doc { get; }

    /// <summary>Plural under which its names are known, e.g. <c>flashes</c>; none where nothing refers to them.</summary>
    public string? NamedAmong { get; }

    /// <summary>Its keys in order, without the name of a part.</summary>
    public IReadOnlyList<KeyFacts> Facts { get; }

    /// <summary>Sections inside it.</summary>
    public IEnumerable<ISection> Inner { get; }

    /// <summary>Writes its definition.</summary>
    public void WriteDefinition(Utf8JsonWriter json, SchemaKinds kinds);
}
