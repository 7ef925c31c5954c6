using StudioKit.Kits;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Looks parts of the library up by words.</summary>
/// <param name="parts">The library.</param>
internal sealed class PartSearch(OwnParts parts)
{
    private const int FiguresShown = 5;

    private (PartsLibrary Library, ILookup<string, ListedPart> Parts)? _listed;

    /// <summary>Parts of a kind that mention every word.</summary>
    public PartsAnswer Answer(PartsRequest request)
    {
        var words = request.Search.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (_listed?.Library != parts.Library)
        {
            _listed = (parts.Library, PartsCatalogue.Of(parts.Library).ToLookup(part => part.Kind, StringComparer.Ordinal));
        }

        var all = _listed.Value.Parts[request.Kind].ToList();
        return new PartsAnswer([.. all.Where(part => words.All(word => $"{part.Name} {part.Title}".Contains(word, StringComparison.OrdinalIgnoreCase))).Select(Line)], all.Count);
    }

    private static PartLine Line(ListedPart part) => new(
        part.Name, part.Title, string.Join(", ", part.Figures.Take(FiguresShown).Select(figure => $"{figure.Key.Replace('-', ' ')} {figure.Value}")), part.Source);
}
