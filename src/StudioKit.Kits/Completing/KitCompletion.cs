using StudioKit.Kits.Text;

namespace StudioKit.Kits.Completing;

/// <summary>Tells what could stand at a place of a kit's text, also while its YAML is broken there.</summary>
public static class KitCompletion
{
    /// <summary>Everything that could stand at a place: keys that are allowed there and not there yet, words, names, parts, units.</summary>
    /// <param name="text">The kit's text.</param>
    /// <param name="position">The place, in UTF-16 units from 0 [1]; one outside the text counts as its nearest end.</param>
    /// <param name="parts">Where the kit's parts are looked up; those that come with StudioKit where left out.</param>
    /// <returns>The candidates, in the order in which the kit has them; none in comments, and in a text that is longer than a kit may be.</returns>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public static IReadOnlyList<KitCandidate> At(string text, int position, PartsLibrary? parts = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > KitLimits.Bytes)
        {
            return [];
        }

        var reader = new LooseReader(text, Math.Clamp(position, 0, text.Length));
        return reader.Read() is { } spot ? Candidates.At(spot, parts ?? PartsLibrary.Embedded) : [];
    }
}
