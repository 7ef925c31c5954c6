using System.Text.Json;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>A key with one value or a list of them.</summary>
internal sealed class ValuesEntry<TOwner, T>(
    string key, string doc, ValueKind<T> kind, Func<TOwner, T[], TOwner> set, Func<TOwner, T[]>? get, ValueBounds bounds, string? refersTo)
    : Entry<TOwner>(key, doc, isRequired: false)
{
    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context)
    {
        var items = node is ListNode list ? list.Items : [node];
        var values = new T[items.Count];
        var count = 0;
        for (var i = 0; i < items.Count; i++)
        {
            var place = node is ListNode ? FormattableString.Invariant($"{path}[{i}]") : path;
            if (!ValueText.TryRead(kind, bounds, items[i], place, context, out var value, mayBeList: node is not ListNode))
            {
                continue;
            }

            values[count++] = value;
            if (refersTo is not null)
            {
                context.AddReference(refersTo, kind.Write(value), items[i]);
            }
        }

        return set(owner, First(values, count));
    }

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
        if (Default(owner) is { } text)
        {
            context.Defaults.Add(new DefaultUsed(path, text, Doc));
        }
    }

    public override KeyFacts Facts(TOwner seed) => new(Key, Doc, IsRequired)
    {
        Kind = kind,
        Bounds = bounds,
        RefersTo = refersTo,
        Reading = (node, path, context) => ValueText.TryRead(kind, bounds, node, path, context, out var value) ? kind.Write(value) : null,
        IsList = true,
        Default = Default(seed),
    };

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

    private string? Default(TOwner owner)
    {
        if (get?.Invoke(owner) is not { Length: > 0 } values)
        {
            return null;
        }

        var texts = new string[values.Length];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = kind.Write(values[i]);
        }

        return string.Join(", ", texts);
    }

    // Loops here and above, as the library's own over an array of numbers would have to be compiled at every start.
    private static T[] First(T[] values, int count)
    {
        if (count == values.Length)
        {
            return values;
        }

        var first = new T[count];
        for (var i = 0; i < count; i++)
        {
            first[i] = values[i];
        }

        return first;
    }
}
