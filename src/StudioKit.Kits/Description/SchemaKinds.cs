using System.Text.Json;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Description;

/// <summary>Kinds of values that the schema has used so far; each is defined once, however many keys take it.</summary>
internal sealed class SchemaKinds
{
    private readonly SortedDictionary<string, Action<Utf8JsonWriter>> _definitions = new(StringComparer.Ordinal);

    /// <summary>Writes a reference to a kind, or the kind itself where it has no pattern worth sharing.</summary>
    public void WriteUse(Utf8JsonWriter json, ValueKind kind)
    {
        if (kind.Pattern is null)
        {
            ValueSchema.Write(json, kind);
            return;
        }

        var name = Name(kind.Noun);
        _definitions.TryAdd(name, writer => ValueSchema.Write(writer, kind));
        json.WriteString("$ref", $"#/$defs/{name}");
    }

    /// <summary>Writes the definitions of all kinds used.</summary>
    public void WriteDefinitions(Utf8JsonWriter json)
    {
        foreach (var (name, write) in _definitions)
        {
            json.WriteStartObject(name);
            write(json);
            json.WriteEndObject();
        }
    }

    // "a mass per length" becomes value-mass-per-length, which no section is named.
    private static string Name(string noun)
    {
        var words = noun.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word is not ("a" or "an"));
        return "value-" + string.Concat(string.Join('-', words).Where(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-'));
    }
}
