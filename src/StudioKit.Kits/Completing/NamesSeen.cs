using StudioKit.Kits.Description;

namespace StudioKit.Kits.Completing;

/// <summary>Names that things of a kit bear, as far as its text can be read.</summary>
internal sealed class NamesSeen
{
    private readonly Dictionary<string, List<string>> _names = new(StringComparer.Ordinal);

    /// <summary>Names of one kind in the order written.</summary>
    /// <param name="kind">Plural of the kind, e.g. <c>flashes</c>.</param>
    public IReadOnlyList<string> Of(string kind) => _names.TryGetValue(kind, out var names) ? names : [];

    /// <summary>Notes the value of a key, if it is a name that others refer to.</summary>
    public void Add(ISection? section, string? key, ReadOnlySpan<char> value)
    {
        if (key != "name" || section?.NamedAmong is not { } kind || LooseLine.Plain(value) is not { Length: > 0 } name)
        {
            return;
        }

        if (!_names.TryGetValue(kind, out var names))
        {
            _names[kind] = names = [];
        }

        if (!names.Contains(name, StringComparer.Ordinal))
        {
            names.Add(name);
        }
    }
}
