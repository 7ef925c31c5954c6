using System.Text.Json;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>A key with one value or a list of them.</summary>
internal sealed class ValuesEntry<TOwner>(
    string key, string doc, ValueKind kind, Func<TOwner, object?[], TOwner> set, Func<TOwner, object?[]> get, ValueBounds bounds, string? refersTo)
    : Entry<TOwner>(key, doc, isRequired: false)
{
    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context)
    {
        var items = node is ListNode list ? list.Items : [node];
        var values = new List<object?>(items.Count);
        for (var i = 0; i < items.Count; i++)
        {
            var place = node is ListNode ? FormattableString.Invariant($"{path}[{i}]") : path;
            if (!ValueText.TryRead(kind, bounds, items[i], place, context, out var value))
            {
                continue;
            }

            values.Add(value);
            if (refersTo is not null)
            {
                context.AddReference(refersTo, kind.Write(value), items[i]);
            }
        }

        return set(owner, [.. values]);
    }

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
        if (get(owner) is { Length: > 0 } values)
        {
            context.Defaults.Add(new DefaultUsed(path, string.Join(", ", values.Select(kind.Write)), Doc));
        }
    }

    public override void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds)
    {
        ValueSchema.WriteDescription(json, Doc, kind, bounds);
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        kinds.WriteUse(json, kind);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        kinds.WriteUse(json, kind);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
