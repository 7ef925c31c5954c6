using StudioKit.Kits.Lighting;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Parts;

/// <summary>Replaces the names of parts by what the parts library says of them, with the kit's own fields on top.</summary>
internal sealed class PartResolver(PartsLibrary library, DiagnosticList diagnostics)
{
    private const string PartKey = "part";
    private const string SourceKey = "source";
    private readonly Dictionary<string, MapNode?> _read = new(StringComparer.Ordinal);
    private readonly Dictionary<string, LightDistribution?> _distributions = new(StringComparer.Ordinal);

    /// <summary>Texts of the parts used, by place.</summary>
    public Dictionary<string, string> Used { get; } = new(StringComparer.Ordinal);

    /// <summary>Parts that are named and nowhere, by place.</summary>
    public SortedSet<string> Missing { get; } = new(StringComparer.Ordinal);

    /// <summary>A section with the part it names filled in.</summary>
    /// <returns>The section; none where the part cannot be had, which is then reported.</returns>
    public MapNode? Expand(YamlNode node, string kind) => Expand(node, kind, []);

    /// <summary>The measured light distribution that a file beside the kit holds.</summary>
    /// <param name="named">Name of the file, with its ending or without.</param>
    /// <returns>The distribution; none where the file cannot be had, which is then reported.</returns>
    public LightDistribution? Distribution(ScalarNode named)
    {
        const string Kind = PartsLibrary.LightDistributions;
        var ending = PartsLibrary.EndingOf(Kind);
        var name = named.Text.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? named with { Text = named.Text[..^ending.Length] } : named;
        if (!IsPlain(name))
        {
            return null;
        }

        if (!_distributions.TryGetValue(name.Text, out var found))
        {
            found = Source(name, Kind) is { } source ? DistributionFile.Read(name.Text, source, diagnostics) : null;
            _distributions[name.Text] = found;
        }

        return found;
    }

    private MapNode? Expand(YamlNode node, string kind, IReadOnlyList<string> chain)
    {
        if (node is ScalarNode name)
        {
            return Part(name, kind, chain) is { } whole ? whole with { Source = name.Source, Line = name.Line, Column = name.Column } : null;
        }

        var own = (MapNode)node;
        if (own.Find(PartKey) is not { } reference)
        {
            return own;
        }

        if (reference.Value is not ScalarNode { IsEmpty: false } part)
        {
            diagnostics.Error(DiagnosticCodes.WrongShape, reference.Value, "'part' takes the name of one part.", null);
            return null;
        }

        var rest = own with { Pairs = [.. own.Pairs.Where(pair => pair != reference)] };
        return Part(part, kind, chain) is { } found ? Merge(found, rest) : null;
    }

    private MapNode? Part(ScalarNode name, string kind, IReadOnlyList<string> chain)
    {
        var place = $"{kind}/{name.Text}";
        if (!IsPlain(name) || IsCycle(name, place, chain))
        {
            return null;
        }

        if (!_read.TryGetValue(place, out var map))
        {
            map = Load(name, kind, [.. chain, place]);
            _read[place] = map;
        }

        return map;
    }

    // What the library has of a part; a kind that none comes along with lies beside the kit or nowhere.
    private SourceText? Source(ScalarNode name, string kind)
    {
        if (library.Find(kind, name.Text) is not { } part)
        {
            Missing.Add($"{kind}/{name.Text}");
            var known = library.Names(kind);
            var nearest = NearestName.Of(name.Text, known);
            var all = known.Count > 0 ? $"Known {kind}: {string.Join(", ", known)}."
                : kind == PartsLibrary.LightDistributions ? $"Put the file beside the kit, as 'parts/{kind}/{Excerpt.Short(name.Text)}{PartsLibrary.EndingOf(kind)}'."
                : $"The parts library has no '{kind}' yet.";
            diagnostics.Error(
                DiagnosticCodes.MissingPart, name, $"There is no part '{Excerpt.Short(name.Text)}' among the {kind}.",
                nearest is null ? all : $"Did you mean '{nearest}'?");
            return null;
        }

        var source = TextDecoder.Decode(part.Bytes, part.File, KitLimits.OfPart(kind), diagnostics);
        if (source is not null)
        {
            Used[$"{kind}/{name.Text}"] = source.Text;
        }

        return source;
    }

    private MapNode? Load(ScalarNode name, string kind, IReadOnlyList<string> chain)
    {
        if (Source(name, kind) is not { } source || YamlTree.Read(source, diagnostics) is not { } root)
        {
            return null;
        }

        if (root is not MapNode map)
        {
            diagnostics.Error(DiagnosticCodes.WrongShape, root, "A part is a section of keys and values.", null);
            return null;
        }

        return Expand(WithoutSource(map), kind, chain);
    }

    private MapNode WithoutSource(MapNode part)
    {
        if (part.Find(SourceKey) is { } source)
        {
            return part with { Pairs = [.. part.Pairs.Where(pair => pair != source)] };
        }

        diagnostics.Warn(
            DiagnosticCodes.PartWithoutSource, part, "The part does not say where its figures come from.", "Add a line such as 'source: weighed and measured'.");
        return part;
    }

    private bool IsPlain(ScalarNode name)
    {
        var text = name.Text;
        var isPlain = text.Length is > 0 and <= 80 && char.IsAsciiLetterOrDigit(text[0])
            && text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '.' or '_') && !text.Contains("..", StringComparison.Ordinal);
        if (!isPlain)
        {
            var climbs = text.Contains('/', StringComparison.Ordinal) || text.Contains('\\', StringComparison.Ordinal) || text.Contains("..", StringComparison.Ordinal);
            diagnostics.Error(
                DiagnosticCodes.PartName, name,
                climbs ? $"'{Excerpt.Short(text)}' leads out of the parts folder." : $"'{Excerpt.Short(text)}' is not the name of a part.",
                "A part's name has letters, digits, hyphens, underscores and dots; its folder follows from the section that names it.");
        }

        return isPlain;
    }

    private bool IsCycle(ScalarNode name, string place, IReadOnlyList<string> chain)
    {
        if (!chain.Contains(place, StringComparer.Ordinal) && chain.Count < KitLimits.PartChain)
        {
            return false;
        }

        var circle = string.Join(" → ", chain.Append(place));
        diagnostics.Error(
            DiagnosticCodes.PartCycle, name,
            chain.Count < KitLimits.PartChain ? $"The parts refer to each other in a circle: {circle}." : $"The parts refer to each other too deep: {circle}.",
            "Write the values of one of them out.");
        return true;
    }

    private static MapNode Merge(MapNode part, MapNode own)
    {
        var pairs = new List<MapPair>();
        foreach (var pair in own.Pairs)
        {
            pairs.Add(part.Find(pair.Key.Text) is { } below ? pair with { Value = Over(below.Value, pair.Value) } : pair);
        }

        pairs.AddRange(part.Pairs.Where(pair => own.Find(pair.Key.Text) is null));
        return own with { Pairs = pairs };
    }

    // A section written over a section fills in what it leaves out; over a part's name, it overrides that part's fields.
    private static YamlNode Over(YamlNode below, YamlNode own) => (below, own) switch
    {
        (MapNode part, MapNode fields) => Merge(part, fields),
        (ScalarNode { IsEmpty: false } name, MapNode fields) when fields.Find(PartKey) is null => fields with
        {
            Pairs = [new MapPair(name with { Text = PartKey }, name), .. fields.Pairs],
        },
        _ => own,
    };
}
