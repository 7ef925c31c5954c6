using StudioKit.Physics;

namespace StudioKit.Kits.Editing;

/// <summary>Something to be written into a kit: a single value, a list or a section.</summary>
public abstract record KitValue
{
    private KitValue()
    {
    }

    /// <summary>A single value.</summary>
    /// <param name="text">The value as a person would type it, without quotation marks of YAML.</param>
    public static KitValue Of(string text) => new Scalar(text);

    /// <summary>A list of single values.</summary>
    /// <param name="texts">The values as a person would type them.</param>
    public static KitValue ListOf(params string[] texts) => new List([.. texts.Select(Of)]);

    /// <summary>A section of single values.</summary>
    /// <param name="values">Keys with their values, in order.</param>
    public static KitValue SectionOf(params (string Key, string Value)[] values) => new Section([.. values.Select(value => new KitEntry(value.Key, Of(value.Value)))]);

    /// <summary>A single value.</summary>
    /// <param name="Text">The value, without quotation marks of YAML; empty where a key has no value.</param>
    public sealed record Scalar(string Text) : KitValue;

    /// <summary>A list.</summary>
    /// <param name="Items">Its entries.</param>
    public sealed record List(ValueList<KitValue> Items) : KitValue;

    /// <summary>A section.</summary>
    /// <param name="Entries">Its keys and values, in order.</param>
    public sealed record Section(ValueList<KitEntry> Entries) : KitValue
    {
        internal KitEntry? Find(string key) => Entries.FirstOrDefault(entry => entry.Key == key);
    }
}
