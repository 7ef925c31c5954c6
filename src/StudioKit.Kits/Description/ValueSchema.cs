using System.Text.Json;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Description;

/// <summary>Tells an editor of one kind of value.</summary>
internal static class ValueSchema
{
    public static void WriteDescription(Utf8JsonWriter json, string doc, ValueKind kind, ValueBounds bounds)
    {
        var range = bounds is (null, null) ? "" : $" Allowed: {bounds}.";
        json.WriteString("description", doc + range);
        if (kind.Words.Count == 0)
        {
            json.WriteStartArray("examples");
            json.WriteStringValue(kind.Example);
            json.WriteEndArray();
        }
    }

    public static void Write(Utf8JsonWriter json, ValueKind kind)
    {
        if (kind.Words.Count > 0)
        {
            WriteWords(json, kind);
            return;
        }

        WriteType(json, kind.JsonType);
        if (kind.Pattern is not null)
        {
            json.WriteString("pattern", $"^\\s*({kind.Pattern()}){(kind.TakesUncertainty ? Patterns.Uncertainty : "")}\\s*$");
        }
    }

    private static void WriteType(Utf8JsonWriter json, string? other)
    {
        if (other is null)
        {
            json.WriteString("type", "string");
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue("string");
        json.WriteStringValue(other);
        json.WriteEndArray();
    }

    private static void WriteWords(Utf8JsonWriter json, ValueKind kind)
    {
        json.WriteStartArray("enum");
        foreach (var word in kind.Words)
        {
            json.WriteStringValue(word);
        }

        if (kind.JsonType == "boolean")
        {
            json.WriteBooleanValue(true);
            json.WriteBooleanValue(false);
        }

        json.WriteEndArray();
    }
}
