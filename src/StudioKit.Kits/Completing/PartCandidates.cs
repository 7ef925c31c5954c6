namespace StudioKit.Kits.Completing;

/// <summary>Names of parts that may stand at a place.</summary>
internal static class PartCandidates
{
    private const int FiguresShown = 4;

    public static IEnumerable<KitCandidate> At(Spot spot, PartsLibrary parts)
    {
        // A part's name stands in place of a whole entry, but not of a key that is there.
        return spot.PartKind is not { } kind || spot.HasColon ? [] : Listed(parts, kind).Select(part => Candidates.Value(spot, KitCandidateKind.Part, part.Name, Line(part))).OfType<KitCandidate>();
    }

    // A folder that cannot be read has no candidates; a kit that names a part from it says why.
    private static IReadOnlyList<ListedPart> Listed(PartsLibrary parts, string kind)
    {
        try
        {
            return PartsCatalogue.Of(parts, kind);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static string Line(ListedPart part)
    {
        var figures = string.Join("; ", part.Figures.Take(FiguresShown).Select(figure => $"{figure.Key} {figure.Value}"));
        return figures.Length == 0 ? part.Title : $"{part.Title}: {figures}";
    }
}
