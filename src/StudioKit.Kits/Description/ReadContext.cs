using StudioKit.Kits.Parts;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Description;

/// <summary>What one reading of a kit gathers beside the kit itself.</summary>
internal sealed class ReadContext(DiagnosticList diagnostics, PartResolver parts)
{
    private readonly Dictionary<string, Dictionary<string, YamlNode>> _names = new(StringComparer.Ordinal);
    private readonly List<(string Kind, string Name, YamlNode At)> _references = [];

    public DiagnosticList Diagnostics { get; } = diagnostics;

    public PartResolver Parts { get; } = parts;

    public List<DefaultUsed> Defaults { get; } = [];

    /// <summary>Values and names of parts as they were written, by the path of their key.</summary>
    public Dictionary<string, string> Written { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, Uncertainty> Uncertainties { get; } = new(StringComparer.Ordinal);

    /// <summary>Notes that a thing of some kind bears a name.</summary>
    public void AddName(string kind, ScalarNode node)
    {
        if (!_names.TryGetValue(kind, out var taken))
        {
            _names[kind] = taken = new(StringComparer.Ordinal);
        }

        var name = node.Text.Trim();
        if (!taken.TryAdd(name, node))
        {
            Diagnostics.Error(
                DiagnosticCodes.DuplicateName, node, $"There are two {kind} named '{Excerpt.Short(name)}'.",
                $"The other is on line {taken[name].Line}; give each its own name.");
        }
    }

    /// <summary>Notes that something refers to a thing by its name; whether it exists is known once all is read.</summary>
    public void AddReference(string kind, string name, YamlNode at) => _references.Add((kind, name.Trim(), at));

    /// <summary>Reports every reference to a name that nothing bears.</summary>
    public void CheckReferences()
    {
        foreach (var (kind, name, at) in _references)
        {
            var known = _names.GetValueOrDefault(kind)?.Keys ?? Enumerable.Empty<string>();
            if (Diagnostics.IsFull || known.Contains(name, StringComparer.Ordinal))
            {
                continue;
            }

            var nearest = NearestName.Of(name, known);
            var all = known.Any() ? $"Known {kind}: {Excerpt.Short(string.Join(", ", known))}." : $"The kit has no {kind}.";
            Diagnostics.Error(
                DiagnosticCodes.UnknownName, at, $"There is nothing named '{Excerpt.Short(name)}' among the {kind}.",
                nearest is null ? all : $"Did you mean '{nearest}'?");
        }
    }
}
