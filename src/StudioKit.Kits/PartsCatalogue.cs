using StudioKit.Kits.Description;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Parts;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;
using StudioKit.Physics;

namespace StudioKit.Kits;

/// <summary>Everything that can be named in a kit.</summary>
public static class PartsCatalogue
{
    private static readonly string[] Titles = ["name", "material"];

    /// <summary>Kinds of parts that a kit can name, in alphabetical order; a library need not have parts of every kind.</summary>
    public static IReadOnlyList<string> Kinds { get; } =
        [.. All(KitSection.Kit).Select(section => section.PartKind).OfType<string>().Append(PartsLibrary.LightDistributions).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Lists a library kind by kind, in alphabetical order.</summary>
    /// <param name="library">The library.</param>
    /// <returns>Its parts; one that cannot be read is left out, as a kit that names it says why.</returns>
    /// <exception cref="IOException">A part beside the kit cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A part beside the kit may not be read.</exception>
    public static IReadOnlyList<ListedPart> Of(PartsLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return [.. Kinds.SelectMany(kind => Of(library, kind))];
    }

    /// <summary>Lists the parts of one kind, in alphabetical order.</summary>
    /// <param name="library">The library.</param>
    /// <param name="kind">The kind, e.g. <c>pipes</c>.</param>
    /// <returns>Its parts; one that cannot be read is left out, as a kit that names it says why.</returns>
    /// <exception cref="IOException">A part beside the kit cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A part beside the kit may not be read.</exception>
    public static IReadOnlyList<ListedPart> Of(PartsLibrary library, string kind)
    {
        ArgumentNullException.ThrowIfNull(library);
        return [.. library.Names(kind).Select(name => Read(library, kind, name)).OfType<ListedPart>()];
    }

    private static ListedPart? Read(PartsLibrary library, string kind, string name)
    {
        var diagnostics = new DiagnosticList(name);
        if (library.Find(kind, name) is not { } part || TextDecoder.Decode(part.Bytes, part.File, KitLimits.OfPart(kind), diagnostics) is not { } source)
        {
            return null;
        }

        if (kind == PartsLibrary.LightDistributions)
        {
            return DistributionFile.Read(name, source, diagnostics) is { } beam ? new ListedPart(kind, name, beam.FileName, "", Beam(beam)) : null;
        }

        if (YamlTree.Read(source, diagnostics) is not MapNode map)
        {
            return null;
        }

        var title = Titles.Select(map.Find).OfType<MapPair>().Select(pair => Text(pair.Value)).FirstOrDefault(text => text.Length > 0) ?? name;
        return new ListedPart(kind, name, title, map.Find("source") is { } from ? Text(from.Value) : "", [.. Figures(map, "").Where(figure => figure.Key is not ("name" or "source"))]);
    }

    private static ValueList<PartFigure> Beam(LightDistribution beam) =>
        [new("beam-width", $"{NumberText.Write(Math.Round(beam.BeamWidth.Degrees))}°"), new("beam-height", $"{NumberText.Write(Math.Round(beam.BeamHeight.Degrees))}°")];

    private static IEnumerable<PartFigure> Figures(MapNode map, string before) => map.Pairs.SelectMany(pair => pair.Value is MapNode inner
        ? Figures(inner, $"{before}{pair.Key.Text}.")
        : [new PartFigure(before + pair.Key.Text, Text(pair.Value))]);

    private static string Text(YamlNode node) => node switch
    {
        ScalarNode scalar => scalar.Text,
        ListNode list => string.Join(", ", list.Items.Select(Text)),
        _ => "",
    };

    private static IEnumerable<ISection> All(ISection section) => section.Inner.SelectMany(inner => All(inner).Prepend(inner));
}
