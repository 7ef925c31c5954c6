using System.Text.Json;

namespace StudioKit.Kits.Description;

/// <summary>Tells an editor where a section, or a part's name instead of it, may stand.</summary>
internal static class SectionSchema
{
    public static void WriteUse(Utf8JsonWriter json, ISection section)
    {
        var reference = $"#/$defs/{section.Name}";
        if (section.PartKind is null)
        {
            json.WriteString("$ref", reference);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("description", $"Name of a part from parts/{section.PartKind}.");
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("$ref", reference);
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
