using System.Globalization;

namespace StudioKit.Kits.Editing;

/// <summary>Paths in which entries of lists go by their names, e.g. <c>lenses[alder 180].magnifications</c> or <c>set-ups[white].subjects[frog]</c>.</summary>
public static class NamedPath
{
    // What an entry goes by where it has no name: a light by its flash.
    private static readonly string[] Names = ["name", "flash"];

    /// <summary>The path with the places of its entries, counted from 0, in place of their names.</summary>
    /// <param name="text">The kit's text.</param>
    /// <param name="path">The path; a number in brackets is a place already, so an entry whose name is a number goes by its place.</param>
    /// <param name="problem">What the text has not; empty where the path was resolved.</param>
    /// <returns>The path; none where an entry of it is not there.</returns>
    /// <exception cref="ArgumentNullException">There is no text or no path.</exception>
    public static string? Resolve(KitText text, string path, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(path);
        problem = "";
        var resolved = path;
        for (var open = resolved.IndexOf('[', StringComparison.Ordinal); open >= 0; open = resolved.IndexOf('[', open + 1))
        {
            var close = resolved.IndexOf(']', open);
            if (close < 0)
            {
                problem = $"The path '{path}' has a bracket that is not closed.";
                return null;
            }

            var name = resolved[(open + 1)..close];
            if (name.Length > 0 && name.All(char.IsAsciiDigit))
            {
                continue;
            }

            if (Place(text, resolved[..open], name, out problem) is not { } place)
            {
                return null;
            }

            resolved = string.Create(CultureInfo.InvariantCulture, $"{resolved[..open]}[{place}]{resolved[(close + 1)..]}");
        }

        return resolved;
    }

    private static int? Place(KitText text, string list, string name, out string problem)
    {
        problem = "";
        if (text.Find(list)?.Value is not KitValue.List entries)
        {
            problem = $"The kit has no list '{list}'.";
            return null;
        }

        var names = entries.Items.Select(NameOf).ToList();
        var place = names.IndexOf(name);
        if (place >= 0 && names.LastIndexOf(name) == place)
        {
            return place;
        }

        problem = place >= 0
            ? $"'{list}' has several '{name}'; say which by its place, counted from 0."
            : $"'{list}' has no '{name}'. It has {string.Join(", ", names.OfType<string>().Select(known => $"'{known}'"))}.";
        return null;
    }

    private static string? NameOf(KitValue entry) => entry switch
    {
        KitValue.Scalar scalar => scalar.Text,
        KitValue.Section section => Names.Select(section.Find).OfType<KitEntry>().Select(found => (found.Value as KitValue.Scalar)?.Text).FirstOrDefault(),
        _ => null,
    };
}
