using StudioKit.Kits.Description;
using StudioKit.Kits.Editing;
using StudioKit.Physics;

namespace StudioKit.Kits.Forms;

/// <summary>A section of the kit as a form shows it, whatever a kit says there; read from the description that the reader goes by.</summary>
public sealed class KitGroup
{
    private static readonly Lazy<KitGroup> Made = new(() => Of(KitSection.Kit, KitSection.Kit.Facts, ""));

    private KitGroup(ISection section, IReadOnlyList<KeyFacts> facts, string path)
    {
        Path = path;
        Label = FieldLabels.Of(section.Name);
        Help = section.Doc;
        PartKind = section.PartKind;
        NamedAmong = section.NamedAmong;
        Fields = [.. section.WithPart(facts).Select(key => KitField.Of(key, path.Length == 0 ? key.Key : $"{path}.{key.Key}", section.PartKind))];
    }

    /// <summary>The whole kit.</summary>
    public static KitGroup Whole => Made.Value;

    /// <summary>Where it stands, e.g. <c>flashes[]</c>; empty for the whole kit.</summary>
    public string Path { get; }

    /// <summary>One of it in plain words, e.g. <c>Flash</c>.</summary>
    public string Label { get; }

    /// <summary>What it describes, in a sentence.</summary>
    public string Help { get; }

    /// <summary>Kind of part that may stand for it or be named under <c>part</c>; none where there are no such parts.</summary>
    public string? PartKind { get; }

    /// <summary>Plural under which its names are known, e.g. <c>flashes</c>; none where nothing refers to them.</summary>
    public string? NamedAmong { get; }

    /// <summary>Its fields, in the order in which the kit has them.</summary>
    public ValueList<KitField> Fields { get; }

    /// <summary>The field at a path of a kit.</summary>
    /// <param name="path">The path, e.g. <c>flashes[0].guide-number</c>.</param>
    /// <returns>The field; none where no kit has such a key.</returns>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public static KitField? FieldAt(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        KitField? field = null;
        foreach (var key in KeyPath.Read(path)?.Steps.Select(step => step.Key).OfType<string>() ?? [])
        {
            field = (field is null ? Whole : field.Group)?.Fields.FirstOrDefault(one => one.Key == key);
            if (field is null)
            {
                return null;
            }
        }

        return field;
    }

    internal static KitGroup Of(ISection section, IReadOnlyList<KeyFacts> facts, string path) => new(section, facts, path);
}
