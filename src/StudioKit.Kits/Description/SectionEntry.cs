using System.Text.Json;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>A key with a section under it.</summary>
internal sealed class SectionEntry<TOwner, T>(
    string key, string doc, Section<T> section, Func<TOwner, T, TOwner> set, Func<TOwner, T?>? get, bool isRequired)
    : Entry<TOwner>(key, doc, isRequired), IHasSection
    where T : class
{
    public ISection Inner => section;

    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context)
    {
        var standing = get?.Invoke(owner);
        return set(owner, section.Read(node, standing ?? section.Seed, isComplete: standing is not null, path, context));
    }

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
        if (get?.Invoke(owner) is { } standing)
        {
            section.NoteDefaults(standing, path, context);
        }
    }

    public override KeyFacts Facts(TOwner seed) => new(Key, Doc, IsRequired)
    {
        Inner = section,
        InnerFacts = () => section.FactsOf(get?.Invoke(seed) ?? section.Seed),
    };

    public override void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds)
    {
        json.WriteString("description", Doc);
        SectionSchema.WriteUse(json, section);
    }
}
