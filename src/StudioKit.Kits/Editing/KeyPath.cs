using System.Globalization;

namespace StudioKit.Kits.Editing;

/// <summary>The way to a place in a kit, e.g. <c>set-ups[0].lights[1].distance</c>, as the reader writes it.</summary>
internal sealed record KeyPath(IReadOnlyList<KeyStep> Steps)
{
    private const int LongestIndex = 6;

    /// <summary>Reads a path; the empty one is the whole kit.</summary>
    /// <returns>The path; none where it is malformed.</returns>
    public static KeyPath? Read(string path)
    {
        var steps = new List<KeyStep>();
        foreach (var piece in path.Length == 0 ? [] : path.Split('.'))
        {
            var parts = piece.Split('[');
            if (parts[0].Length == 0 || !TryIndexes(parts.AsSpan(1), out var indexes))
            {
                return null;
            }

            steps.Add(new KeyStep(parts[0], 0));
            steps.AddRange(indexes);
        }

        return new KeyPath(steps);
    }

    private static bool TryIndexes(ReadOnlySpan<string> parts, out List<KeyStep> indexes)
    {
        indexes = [];
        foreach (var part in parts)
        {
            if (part.Length is < 2 or > LongestIndex || part[^1] != ']' || !int.TryParse(part.AsSpan(0, part.Length - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var index))
            {
                return false;
            }

            indexes.Add(new KeyStep(null, index));
        }

        return true;
    }
}
