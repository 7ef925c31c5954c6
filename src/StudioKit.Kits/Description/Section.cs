using System.Text.Json;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits.Description;

/// <summary>The one description of a section, which serves reading, checking, defaults and the editor's schema alike.</summary>
/// <param name="name">Name of the section, in the singular for an entry of a list.</param>
/// <param name="doc">What it describes, in a sentence.</param>
/// <param name="seed">The record before anything is read; its values are the defaults.</param>
/// <param name="partKind">Folder of the parts library that may stand for it.</param>
/// <param name="namedAmong">Plural under which its <c>name</c> is unique and may be referred to.</param>
internal sealed class Section<T>(string name, string doc, T seed, string? partKind = null, string? namedAmong = null) : ISection
    where T : class
{
    private readonly List<Entry<T>> _entries = [];
    private readonly List<Func<T, Fault?>> _checks = [];
    private readonly List<(string Key, Func<T, bool> When)> _followers = [];
    private readonly List<(string Key, Func<T, bool> When, string Because, string Hint)> _void = [];
    private IReadOnlyList<KeyFacts>? _facts;

    public string Name { get; } = name;

    public string Doc { get; } = doc;

    public string? PartKind { get; } = partKind;

    public string? NamedAmong { get; } = namedAmong;

    public T Seed { get; } = seed;

    // Made on demand, as reading a kit needs none of it.
    public IReadOnlyList<KeyFacts> Facts => _facts ??= FactsOf(Seed);

    public IEnumerable<ISection> Inner => _entries.OfType<IHasSection>().Select(entry => entry.Inner);

    /// <summary>Begins a key that must be there; what it takes follows.</summary>
    public OpenKey<T> Required(string key, string doc, string? least = null, string? most = null) => new(this, key, doc, new ValueBounds(least, most), isRequired: true);

    /// <summary>Begins a key that may be left out; what it takes follows, and where its default stands in the record if anything stands in for it.</summary>
    public OpenKey<T> Optional(string key, string doc, string? least = null, string? most = null) => new(this, key, doc, new ValueBounds(least, most), isRequired: false);

    /// <summary>Adds a key that names one thing described elsewhere in the kit.</summary>
    public Section<T> Reference(string key, string refersTo, string doc, Func<T, string, T> set, bool isRequired = false) =>
        Add(new ValueEntry<T, string>(key, doc, Kinds.Name, set, null, new ValueBounds(null, null), isRequired, refersTo));

    /// <summary>Adds a key that names one or more things described elsewhere in the kit.</summary>
    public Section<T> References(string key, string refersTo, string doc, Func<T, ValueList<string>, T> set) =>
        Add(new ValuesEntry<T, string>(key, doc, Kinds.Name, (owner, values) => set(owner, [.. values]), null, new ValueBounds(null, null), refersTo));

    /// <summary>Adds a section within this one.</summary>
    public Section<T> Within<TInner>(
        string key, Section<TInner> section, string doc, Func<T, TInner, T> set, Func<T, TInner?>? get = null, bool isRequired = false)
        where TInner : class => Add(new SectionEntry<T, TInner>(key, doc, section, set, get, isRequired));

    /// <summary>Adds a list of sections.</summary>
    public Section<T> Many<TInner>(
        string key, Section<TInner> section, string doc, Func<T, ValueList<TInner>, T> set, bool isRequired = false)
        where TInner : class => Add(new SectionListEntry<T, TInner>(key, doc, section, set, isRequired));

    /// <summary>Adds a key.</summary>
    public Section<T> Add(Entry<T> entry)
    {
        _entries.Add(entry);
        return this;
    }

    /// <summary>Adds a check between values, which runs once all of them were read without fault.</summary>
    public Section<T> Check(Func<T, Fault?> check)
    {
        _checks.Add(check);
        return this;
    }

    /// <summary>Says when a key that is left out follows from others, so that nothing stands in for it that would have to be told.</summary>
    public Section<T> Follows(string key, Func<T, bool> when)
    {
        _followers.Add((key, when));
        return this;
    }

    /// <summary>Refuses keys that change nothing beside others, and tells no default of theirs then.</summary>
    /// <param name="keys">The keys.</param>
    /// <param name="when">When they change nothing.</param>
    /// <param name="because">Why, as what follows the key in a sentence.</param>
    /// <param name="hint">The form that works.</param>
    public Section<T> Without(string[] keys, Func<T, bool> when, string because, string hint)
    {
        foreach (var key in keys)
        {
            _void.Add((key, when, because, hint));
            _followers.Add((key, when));
        }

        return this;
    }

    /// <summary>Its keys in order, with the defaults that a record has.</summary>
    public IReadOnlyList<KeyFacts> FactsOf(T owner) => [.. _entries.Select(entry => entry.Facts(owner))];

    /// <summary>Reads a node into the record.</summary>
    /// <param name="node">A section, or the name of a part.</param>
    /// <param name="seed">The record before anything is read.</param>
    /// <param name="isComplete">Whether the seed already has every required value.</param>
    /// <param name="path">Where the section stands in the file.</param>
    /// <param name="context">Gathers faults, defaults, names and uncertainties.</param>
    public T Read(YamlNode node, T seed, bool isComplete, string path, ReadContext context)
    {
        var errors = context.Diagnostics.Errors;
        if (Open(node, path, context) is not { } map)
        {
            return seed;
        }

        RefuseUnknown(map, context);
        var owner = seed;
        foreach (var entry in _entries)
        {
            owner = ReadEntry(entry, owner, map, isComplete, path, context);
        }

        if (context.Diagnostics.Errors == errors)
        {
            ForgetDefaults(owner, path, context);
            RefuseVoid(owner, map, context);
            Check(owner, map, context);
        }

        return owner;
    }

    /// <summary>Notes the defaults of every key, as the whole section was left out.</summary>
    public void NoteDefaults(T owner, string path, ReadContext context)
    {
        foreach (var entry in _entries)
        {
            entry.NoteDefaults(owner, Join(path, entry.Key), context);
        }

        ForgetDefaults(owner, path, context);
    }

    public void WriteDefinition(Utf8JsonWriter json, SchemaKinds kinds)
    {
        json.WriteString("type", "object");
        json.WriteString("description", Doc);
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartObject("properties");
        if (PartKind is not null)
        {
            json.WriteStartObject("part");
            json.WriteString("type", "string");
            json.WriteString("description", $"Name of a part from parts/{PartKind}; the other keys override its fields.");
            json.WriteEndObject();
        }

        foreach (var entry in _entries)
        {
            json.WriteStartObject(entry.Key);
            entry.WriteSchema(json, Seed, kinds);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        WriteRequired(json);
    }

    private void WriteRequired(Utf8JsonWriter json)
    {
        var required = _entries.Where(entry => entry.IsRequired).Select(entry => entry.Key).ToArray();
        if (required.Length == 0)
        {
            return;
        }

        // A part brings required values along, so either the part is named or all of them are there.
        if (PartKind is not null)
        {
            json.WriteStartArray("anyOf");
            json.WriteStartObject();
            WriteNames(json, ["part"]);
            json.WriteEndObject();
            json.WriteStartObject();
        }

        WriteNames(json, required);
        if (PartKind is not null)
        {
            json.WriteEndObject();
            json.WriteEndArray();
        }
    }

    private static void WriteNames(Utf8JsonWriter json, string[] names)
    {
        json.WriteStartArray("required");
        foreach (var key in names)
        {
            json.WriteStringValue(key);
        }

        json.WriteEndArray();
    }

    private MapNode? Open(YamlNode node, string path, ReadContext context)
    {
        if (node is RefusedNode)
        {
            return null;
        }

        var key = path.Length == 0 ? Capital(Article(Name)) : $"'{path}'";
        if (node is ScalarNode { IsEmpty: true })
        {
            context.Diagnostics.Error(DiagnosticCodes.WrongShape, node, $"{key} has no value.", "Write its keys indented under it, or leave it out.");
            return null;
        }

        if (node is ListNode || (node is ScalarNode && PartKind is null))
        {
            var found = node is ListNode ? "a list" : "a single value";
            context.Diagnostics.Error(
                DiagnosticCodes.WrongShape, node, $"{key} is a section of keys and values, not {found}.", $"Keys known here: {string.Join(", ", Keys())}.");
            return null;
        }

        NotePart(node, path, context);
        return PartKind is null ? (MapNode)node : context.Parts.Expand(node, PartKind);
    }

    private static void NotePart(YamlNode node, string path, ReadContext context)
    {
        if ((node as ScalarNode ?? (node as MapNode)?.Find("part")?.Value) is ScalarNode part)
        {
            context.Written[path] = part.Text;
        }
    }

    private void RefuseUnknown(MapNode map, ReadContext context)
    {
        foreach (var (key, _) in map.Pairs)
        {
            if (context.Diagnostics.IsFull || _entries.Exists(entry => entry.Key == key.Text))
            {
                continue;
            }

            var nearest = NearestName.Of(key.Text, Keys());
            context.Diagnostics.Error(
                DiagnosticCodes.UnknownKey, key, $"'{Excerpt.Short(key.Text)}' is not a key of {Article(Name)}.",
                nearest is null ? $"Keys known here: {string.Join(", ", Keys())}." : $"Did you mean '{nearest}'?");
        }
    }

    private T ReadEntry(Entry<T> entry, T owner, MapNode map, bool isComplete, string path, ReadContext context)
    {
        if (map.Find(entry.Key) is { } pair)
        {
            if (entry.Key == "name" && NamedAmong is not null && pair.Value is ScalarNode { IsEmpty: false } named)
            {
                context.AddName(NamedAmong, named);
            }

            return entry.Read(owner, pair.Value, Join(path, entry.Key), context);
        }

        if (entry.IsRequired && !isComplete)
        {
            context.Diagnostics.Error(DiagnosticCodes.MissingKey, map, $"{Capital(Article(Name))} needs the key '{entry.Key}'.", entry.Doc);
            return owner;
        }

        entry.NoteDefaults(owner, Join(path, entry.Key), context);
        return owner;
    }

    // Only the whole record tells: the keys that another follows from may come after it.
    private void ForgetDefaults(T owner, string path, ReadContext context)
    {
        foreach (var (key, when) in _followers)
        {
            if (when(owner))
            {
                context.Defaults.RemoveAll(used => used.Path == Join(path, key));
            }
        }
    }

    private void RefuseVoid(T owner, MapNode map, ReadContext context)
    {
        foreach (var (key, when, because, hint) in _void)
        {
            if (map.Find(key) is { } pair && when(owner))
            {
                context.Diagnostics.Error(DiagnosticCodes.WithoutEffect, pair.Key, $"'{key}' {because}.", hint);
            }
        }
    }

    private void Check(T owner, MapNode map, ReadContext context)
    {
        foreach (var fault in _checks.Select(check => check(owner)).OfType<Fault>())
        {
            var at = map.Find(fault.Key)?.Value ?? map;
            if (fault.IsWarning)
            {
                context.Diagnostics.Warn(DiagnosticCodes.Unusual, at, fault.Message, fault.Hint);
            }
            else
            {
                context.Diagnostics.Error(DiagnosticCodes.Contradiction, at, fault.Message, fault.Hint);
            }
        }
    }

    private IEnumerable<string> Keys() => PartKind is null ? _entries.Select(entry => entry.Key) : _entries.Select(entry => entry.Key).Prepend("part");

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static string Article(string noun) => noun is "accessories" or "fittings" or "stock" ? $"the {noun}" : noun[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? $"an {noun}" : $"a {noun}";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
