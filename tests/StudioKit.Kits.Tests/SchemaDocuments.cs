using System.Text;
using System.Text.Json;

namespace StudioKit.Kits.Tests;

/// <summary>Random kits drawn from the JSON Schema alone, as an editor's completion would write them; most keys fit, some values do not.</summary>
internal static class SchemaDocuments
{
    private static readonly JsonElement Root = JsonDocument.Parse(KitSchema.Write()).RootElement;

    private static readonly string[] Values =
        ["reed", "55 mm", "1:2", "f/16", "yes", "0.5", "36 mm x 24 mm", "f/2.8 to f/32", "38 m @ ISO 100, 35 mm", "EV 12", "3", "opal-acrylic-3", "pvc-u-20x1.5", "sensor-36x24", "aa-nimh-2000"];

    public static Gen<string> Any { get; } = from seed in Gen.Int select Draw(new Random(seed));

    private static string Draw(Random random)
    {
        var text = new StringBuilder();
        Section(Root, "", random, text, 0);
        return text.ToString();
    }

    private static void Section(JsonElement schema, string indent, Random random, StringBuilder text, int depth)
    {
        var required = schema.TryGetProperty("required", out var names) ? names.EnumerateArray().Select(name => name.GetString()!).ToHashSet() : [];
        var some = false;
        foreach (var key in schema.GetProperty("properties").EnumerateObject())
        {
            if (random.NextDouble() < (required.Contains(key.Name) ? 0.97 : depth == 0 ? 0.4 : 0.3))
            {
                text.Append(indent).Append(key.Name).Append(':');
                Value(key.Value, indent + "  ", random, text, depth + 1);
                some = true;
            }
        }

        if (!some)
        {
            text.Append(indent).Append("name: reed\n");
        }
    }

    private static void Value(JsonElement schema, string indent, Random random, StringBuilder text, int depth)
    {
        if (schema.TryGetProperty("anyOf", out var choices))
        {
            Value(choices[random.Next(choices.GetArrayLength())], indent, random, text, depth);
        }
        else if (schema.TryGetProperty("type", out var type) && type.ValueKind == JsonValueKind.String && type.GetString() == "array" && schema.GetProperty("items") is var items)
        {
            text.Append('\n').Append(indent).Append('-');
            Value(items, indent + "  ", random, text, depth);
        }
        else if (schema.TryGetProperty("$ref", out var reference) && Root.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..]) is var target && target.TryGetProperty("properties", out _))
        {
            text.Append('\n');
            Section(target, indent, random, text, depth);
        }
        else
        {
            text.Append(' ').Append(Scalar(schema, random)).Append('\n');
        }
    }

    private static string Scalar(JsonElement schema, Random random) =>
        random.NextDouble() < 0.08 ? Values[random.Next(Values.Length)]
        : schema.TryGetProperty("enum", out var words) ? words[random.Next(words.GetArrayLength())].ToString().Replace("True", "yes", StringComparison.Ordinal).Replace("False", "no", StringComparison.Ordinal)
        : schema.TryGetProperty("examples", out var examples) ? examples[0].GetString()!
        : Values[random.Next(Values.Length)];
}
