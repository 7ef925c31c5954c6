using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Editing;

/// <summary>The keys of a section with that which names a part.</summary>
internal static class SectionKeys
{
    public const string Part = "part";

    /// <summary>All keys in order; that of a part first, where one may stand for the section.</summary>
    public static IReadOnlyList<KeyFacts> All(this ISection section) => section.WithPart(section.Facts);

    /// <summary>Keys of a section with that of a part before them, where one may stand for it.</summary>
    public static IReadOnlyList<KeyFacts> WithPart(this ISection section, IReadOnlyList<KeyFacts> facts) => section.PartKind is null
        ? facts
        : [new KeyFacts(Part, $"Name of a part from parts/{section.PartKind}; the other keys override its fields.", IsRequired: false) { Kind = Kinds.Name }, .. facts];

    public static KeyFacts? Find(this ISection section, string key) => section.All().FirstOrDefault(facts => facts.Key == key);

    /// <summary>Whether a key takes words of one's own, so that a number there is meant as a word.</summary>
    public static bool TakesText(this KeyFacts? facts) => facts is null || facts.Kind == Kinds.Name || facts.Kind == Kinds.Sentence || facts.Inner is not null;
}
