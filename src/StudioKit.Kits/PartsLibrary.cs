using System.Reflection;
using StudioKit.Kits.Parts;
using StudioKit.Kits.Text;

namespace StudioKit.Kits;

/// <summary>Pipes, fittings, sheets, cells and other parts that a kit may name instead of describing them.</summary>
/// <remarks>
/// A part is a small YAML file <c>parts/KIND/NAME.yaml</c>, a measured light distribution <c>parts/light-distributions/NAME.ies</c>. The library that comes with StudioKit lies in the assembly, so that it is there wherever the tool runs;
/// a folder <c>parts</c> beside the kit file wins over it.
/// </remarks>
public sealed class PartsLibrary
{
    /// <summary>Kind of the parts that are measured light distributions, which are photometric texts and no YAML.</summary>
    public const string LightDistributions = "light-distributions";

    private static readonly Assembly Home = typeof(PartsLibrary).Assembly;
    private readonly string? _folder;
    private readonly IReadOnlyDictionary<string, string> _texts;

    private PartsLibrary(string? folder, IReadOnlyDictionary<string, string> texts)
    {
        _folder = folder;
        _texts = texts;
    }

    /// <summary>The library that comes with StudioKit.</summary>
    public static PartsLibrary Embedded { get; } = new(null, new Dictionary<string, string>());

    /// <summary>The library as a kit file sees it: the folder <c>parts</c> beside it first, then the one that comes with StudioKit.</summary>
    /// <param name="kitPath">Path of the kit file.</param>
    public static PartsLibrary BesideKit(string kitPath) =>
        new(Path.Combine(Path.GetDirectoryName(kitPath) ?? "", "parts"), new Dictionary<string, string>());

    /// <summary>A library from texts in memory first, then the one that comes with StudioKit.</summary>
    /// <param name="texts">Text of each part by <c>KIND/NAME</c>, e.g. <c>pipes/pvc-u-20x1.5</c>.</param>
    public static PartsLibrary FromTexts(IReadOnlyDictionary<string, string> texts) => new(null, texts);

    /// <summary>What the names of a kind's files end with.</summary>
    /// <param name="kind">The kind, e.g. <c>pipes</c>.</param>
    public static string EndingOf(string kind) => kind == LightDistributions ? ".ies" : ".yaml";

    /// <summary>Names of all parts of a kind, in alphabetical order.</summary>
    /// <param name="kind">Name of the kind's folder, e.g. <c>pipes</c>.</param>
    public IReadOnlyList<string> Names(string kind)
    {
        var prefix = $"parts/{kind}/";
        var embedded = Home.GetManifestResourceNames().Select(Plain).Where(name => name.StartsWith(prefix, StringComparison.Ordinal))
            .Select(name => Path.GetFileNameWithoutExtension(name));
        var texts = _texts.Keys.Where(key => key.StartsWith(kind + "/", StringComparison.Ordinal)).Select(key => key[(kind.Length + 1)..]);
        return [.. embedded.Concat(texts).Concat(InFolder(kind)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    internal PartText? Find(string kind, string name)
    {
        if (_texts.TryGetValue($"{kind}/{name}", out var text))
        {
            return new PartText($"parts/{kind}/{name}{EndingOf(kind)}", System.Text.Encoding.UTF8.GetBytes(text));
        }

        var path = _folder is null ? null : Path.Combine(_folder, kind, name + EndingOf(kind));
        return path is not null && File.Exists(path)
            ? new PartText(path.Replace('\\', '/'), KitFile.ReadBounded(path, KitLimits.OfPart(kind)))
            : FromAssembly($"parts/{kind}/{name}{EndingOf(kind)}");
    }

    private static PartText? FromAssembly(string place)
    {
        // The build names resources with the separator of the machine it ran on.
        using var stream = Home.GetManifestResourceStream(place) ?? Home.GetManifestResourceStream(place.Replace('/', '\\'));
        if (stream is null)
        {
            return null;
        }

        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new PartText(place, bytes);
    }

    private IEnumerable<string> InFolder(string kind)
    {
        var folder = _folder is null ? "" : Path.Combine(_folder, kind);
        return Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*" + EndingOf(kind)).Select(path => Path.GetFileNameWithoutExtension(path)) : [];
    }

    private static string Plain(string resource) => resource.Replace('\\', '/');
}
