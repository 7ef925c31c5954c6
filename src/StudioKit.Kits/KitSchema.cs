using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using StudioKit.Kits.Description;

namespace StudioKit.Kits;

/// <summary>Tells editors what a kit file may hold, so that they complete and check it.</summary>
public static class KitSchema
{
    /// <summary>Writes the JSON Schema (draft 2020-12) of a kit file.</summary>
    /// <returns>The schema, indented, made from the same description that the reader goes by.</returns>
    public static string Write()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "StudioKit kit file");
            var kinds = new SchemaKinds();
            KitSection.Kit.WriteDefinition(json, kinds);
            WriteDefinitions(json, kinds);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteDefinitions(Utf8JsonWriter json, SchemaKinds kinds)
    {
        json.WriteStartObject("$defs");
        foreach (var section in KitSection.Inner)
        {
            json.WriteStartObject(section.Name);
            section.WriteDefinition(json, kinds);
            json.WriteEndObject();
        }

        kinds.WriteDefinitions(json);
        json.WriteEndObject();
    }
}
