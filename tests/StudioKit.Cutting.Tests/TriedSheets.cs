namespace StudioKit.Cutting.Tests;

/// <summary>Fewest equal sheets for a few pieces in whole units, cutting from the top down at every position: slow and plain on purpose.</summary>
/// <remarks>Kerf is taken from the sheet at every cut as the saw does it, not by enlarging anything.</remarks>
internal sealed class TriedSheets((int Width, int Height, bool MayTurn)[] pieces, int kerf)
{
    private readonly Dictionary<(int Pieces, int Width, int Height), bool> _known = [];

    public int Fewest(int width, int height)
    {
        var all = (1 << pieces.Length) - 1;
        var fewest = new int[all + 1];
        for (var set = 1; set <= all; set++)
        {
            fewest[set] = pieces.Length + 1;
            for (var part = set; part > 0; part = (part - 1) & set)
            {
                if (Fits(part, width, height))
                {
                    fewest[set] = Math.Min(fewest[set], fewest[set & ~part] + 1);
                }
            }
        }

        return fewest[all];
    }

    private bool Fits(int set, int width, int height)
    {
        if (!_known.TryGetValue((set, width, height), out var fits))
        {
            fits = width > 0 && height > 0 && (Single(set, width, height) || Split(set, width, height));
            _known[(set, width, height)] = fits;
        }

        return fits;
    }

    private bool Single(int set, int width, int height)
    {
        if ((set & (set - 1)) != 0)
        {
            return false;
        }

        var piece = pieces[int.Log2(set)];
        return (piece.Width <= width && piece.Height <= height) || (piece.MayTurn && piece.Height <= width && piece.Width <= height);
    }

    private bool Split(int set, int width, int height)
    {
        for (var part = (set - 1) & set; part > 0; part = (part - 1) & set)
        {
            for (var at = 1; at < Math.Max(width, height); at++)
            {
                if ((at < width && Fits(part, at, height) && Fits(set & ~part, width - at - kerf, height))
                    || (at < height && Fits(part, width, at) && Fits(set & ~part, width, height - at - kerf)))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
