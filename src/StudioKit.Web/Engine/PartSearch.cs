using StudioKit.Kits;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Looks parts of the library up by words.</summary>
internal sealed class PartSearch
{
    private const int FiguresShown = 5;

    private readonly Lazy<ILookup<string, ListedPart>> _parts = new(() => PartsCatalogue.Of(PartsLibrary.Embedded).ToLookup(part => part.Kind, StringComparer.Ordinal));

    /// <summary>Parts of a kind that mention every word.</summary>
    public PartsAnswer Answer(PartsRequest request)
    {
        var words = request.Search.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var all = _parts.Value[request.Kind].ToList();
        return new PartsAnswer([.. all.Where(part => words.All(word => $"{part.Name} {part.Title}".Contains(word, StringComparison.OrdinalIgnoreCase))).Select(Line)], all.Count);
    }

    private static PartLine Line(ListedPart part) => new(
        part.Name, part.Title, string.Join(", ", part.Figures.Take(FiguresShown).Select(figure => $"{figure.Key.Replace('-', ' ')} {figure.Value}")), part.Source);
}
