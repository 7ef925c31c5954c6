using System.Text.Json;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>A key with a single value.</summary>
internal sealed class ValueEntry<TOwner, T>(
    string key, string doc, ValueKind<T> kind, Func<TOwner, T, TOwner> set, Func<TOwner, T>? get, ValueBounds bounds, bool isRequired, string? refersTo = null)
    : Entry<TOwner>(key, doc, isRequired)
{
    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context)
    {
        if (!ValueText.TryRead(kind, bounds, node, path, context, out var value))
        {
            return owner;
        }

        if (refersTo is not null)
        {
            context.AddReference(refersTo, kind.Write(value), node);
        }

        return set(owner, value);
    }

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
        if (get is not null && kind.Write(get(owner)) is { Length: > 0 } text)
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
        Default = get is not null && kind.Write(get(seed)) is { Length: > 0 } text ? text : null,
    };

    public override void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds)
    {
        ValueSchema.WriteDescription(json, Doc, kind, bounds);
        if (get is not null && kind.Write(get(seed)) is { Length: > 0 } text)
        {
            json.WriteString("default", text);
        }

        kinds.WriteUse(json, kind);
    }
}
