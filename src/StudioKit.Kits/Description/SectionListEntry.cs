using System.Text.Json;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Description;

/// <summary>A key with a list of sections under it.</summary>
internal sealed class SectionListEntry<TOwner, T>(
    string key, string doc, Section<T> section, Func<TOwner, ValueList<T>, TOwner> set, bool isRequired)
    : Entry<TOwner>(key, doc, isRequired), IHasSection
    where T : class
{
    public ISection Inner => section;

    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context)
    {
        if (node is RefusedNode)
        {
            return owner;
        }

        if (node is not ListNode list)
        {
            var found = node is MapNode ? "a section" : node is ScalarNode { IsEmpty: true } ? "nothing" : "a single value";
            context.Diagnostics.Error(
                DiagnosticCodes.WrongShape, node, $"'{Key}' is a list, not {found}.", "Begin each entry with a hyphen and a space, '- '.");
            return owner;
        }

        if (list.Items.Count == 0 && IsRequired)
        {
            context.Diagnostics.Error(DiagnosticCodes.MissingKey, node, $"'{Key}' needs at least one entry.", Doc);
        }

        var values = new List<T>(list.Items.Count);
        for (var i = 0; i < list.Items.Count && !context.Diagnostics.IsFull; i++)
        {
            values.Add(section.Read(list.Items[i], section.Seed, isComplete: false, FormattableString.Invariant($"{path}[{i}]"), context));
        }

        return set(owner, [.. values]);
    }

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
        // An empty list stands for nothing, so there is nothing to note.
    }

    public override KeyFacts Facts(TOwner seed) => new(Key, Doc, IsRequired) { Inner = section, InnerFacts = () => section.Facts, IsList = true };

    public override void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds)
    {
        json.WriteString("description", Doc);
        json.WriteString("type", "array");
        if (IsRequired)
        {
            json.WriteNumber("minItems", 1);
        }

        json.WriteStartObject("items");
        SectionSchema.WriteUse(json, section);
        json.WriteEndObject();
    }
}
