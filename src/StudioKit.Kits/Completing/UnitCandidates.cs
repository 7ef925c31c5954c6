using StudioKit.Kits.Editing;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Completing;

/// <summary>Units that may follow the number before a place.</summary>
internal static class UnitCandidates
{
    public static IEnumerable<KitCandidate> At(Spot spot)
    {
        if (spot.Value?.Kind is not { Dimension: { } dimension } || Number(spot) is not { } behind)
        {
            return [];
        }

        var end = spot.Position;
        while (end < spot.End && spot.Text[end] is not (' ' or '\t') && !char.IsAsciiDigit(spot.Text[end]))
        {
            end++;
        }

        var begun = spot.Text[behind..spot.Position].Trim();
        return UnitTable.Symbols(dimension).Where(symbol => symbol.StartsWith(begun, StringComparison.Ordinal) && !Clashes(symbol, spot))
            .Select(symbol => new KitCandidate(KitCandidateKind.Unit, symbol, "", new TextEdit(behind, end - behind, symbol == "°" ? symbol : " " + symbol)));
    }

    // Between quotation marks an inch needs another sign, and outside a blank and a hash would be a comment.
    private static bool Clashes(string symbol, Spot spot) => symbol.Contains(spot.Mark == ' ' ? '#' : spot.Mark, StringComparison.Ordinal);

    // Behind the number that the unit being typed belongs to; none where no number stands before the place.
    private static int? Number(Spot spot)
    {
        var at = spot.Position;
        while (at > spot.Start && !char.IsAsciiDigit(spot.Text[at - 1]) && spot.Text[at - 1] is not (' ' or '\t'))
        {
            at--;
        }

        while (at > spot.Start && spot.Text[at - 1] is ' ' or '\t')
        {
            at--;
        }

        return at > spot.Start && char.IsAsciiDigit(spot.Text[at - 1]) ? at : null;
    }
}
