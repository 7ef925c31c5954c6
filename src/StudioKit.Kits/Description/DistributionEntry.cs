using System.Text.Json;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>A key that names the file of a measured light distribution beside the kit.</summary>
internal sealed class DistributionEntry<TOwner>(string key, string doc, Func<TOwner, LightDistribution, TOwner> set) : Entry<TOwner>(key, doc, isRequired: false)
{
    private static readonly ValueBounds Free = new(null, null);

    public override TOwner Read(TOwner owner, YamlNode node, string path, ReadContext context) => Find(node, path, context) is { } found ? set(owner, found) : owner;

    public override void NoteDefaults(TOwner owner, string path, ReadContext context)
    {
    }

    public override KeyFacts Facts(TOwner seed) => new(Key, Doc, IsRequired)
    {
        Kind = Kinds.Distribution,
        FileKind = PartsLibrary.LightDistributions,
        Reading = (node, path, context) => Find(node, path, context)?.Name,
    };

    public override void WriteSchema(Utf8JsonWriter json, TOwner seed, SchemaKinds kinds)
    {
        ValueSchema.WriteDescription(json, Doc, Kinds.Distribution, Free);
        kinds.WriteUse(json, Kinds.Distribution);
    }

    private static LightDistribution? Find(YamlNode node, string path, ReadContext context) =>
        ValueText.TryRead(Kinds.Distribution, Free, node, path, context, out _) ? context.Parts.Distribution((ScalarNode)node) : null;
}
